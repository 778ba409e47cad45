package org.tautlog.spc.capability;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Sample;

/**
 * Carries values over to the scale on which the limits of control charts hold.
 *
 * <pre>
 * normal values:   z = x
 * a fitted shape:  z = Phi^-1(F(x)),  F its distribution function
 * no shape:        z = Phi^-1((r - 0.5) / n),  r the rank among the n values, the mean rank where they tie
 * </pre>
 *
 * <p>Scores by ranks know only the order of the values. A level that moves shows in them, a single stray does not; so they
 * can speak against control and never for it.
 *
 * <p>Source: the fitted distribution in place of the normal: ISO 22514-2; scores by ranks: Blom (1958), with 0.5; from
 * memory.
 */
final class NormalScores {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    /** Shares nearer to 0 or 1 are taken as this: their scores, beyond 7.9, lie past every limit anyway. */
    private static final double NEAREST = 1e-15;

    private final Shape shape;
    private final DoubleUnaryOperator score;

    private NormalScores(Shape shape, DoubleUnaryOperator score) {
        this.shape = shape;
        this.score = score;
    }

    static NormalScores ofNormal() {
        return new NormalScores(Shape.NORMAL, x -> x);
    }

    static NormalScores of(FittedShape fit) {
        return new NormalScores(fit.shape(), x -> quantile(fit.below(x)));
    }

    static NormalScores byRanks(Sample sample) {
        var sorted = sample.sorted();
        double n = sorted.length;
        return new NormalScores(
                Shape.EMPIRICAL, x -> quantile((n + Sample.below(sorted, x) - Sample.above(sorted, x)) / (2 * n)));
    }

    /** How much points resemble the ones before, on this scale of ranks: the long tail of a skewed shape does not bend it. */
    static Autocorrelation neighbours(double[] points) {
        return Sample.varying(points, 3, "scores by ranks")
                .flatMap(sample -> Autocorrelation.ofDifferences(byRanks(sample).of(points)))
                .found()
                .orElse(Autocorrelation.none());
    }

    double[] of(double[] values) {
        return Arrays.stream(values).map(score).toArray();
    }

    /** What signals on the chart of these scores say about control. */
    Stability judged(Stability charted) {
        if (shape == Shape.NORMAL || charted.word() == Stability.Word.NOT_SHOWN) return charted;
        boolean moved = charted.word() == Stability.Word.OUT_OF_CONTROL;
        String said = shape != Shape.EMPIRICAL
                ? charted.said() + "; charted as normal scores of the fitted " + shape.words()
                : moved
                        ? charted.said() + "; charted as normal scores of their ranks"
                        : "no shape fits, so no limits hold for single values";
        var word = shape == Shape.EMPIRICAL && !moved ? Stability.Word.NOT_SHOWN : charted.word();
        return new Stability(word, charted.points(), charted.signals(), said);
    }

    private static double quantile(double share) {
        return STANDARD.inverseCumulativeProbability(Math.max(NEAREST, Math.min(1 - NEAREST, share)));
    }
}
