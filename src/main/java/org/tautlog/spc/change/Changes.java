package org.tautlog.spc.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Looks for changes of mean and of spread.
 *
 * <p>The time and the p value of a change of mean come from the best least-squares split; a change of spread is a change of
 * mean in the square roots of the absolute deviations from the local median, which are close to normal for normal values.
 * Bounds on the size: Welch's t for means; for the ratio of standard deviations the normal approximation of its logarithm
 * with the pooled kurtosis,
 *
 * <pre> ln ratio +- z sqrt((kurtosis - 1) / 4 (1 / n1 + 1 / n2)) </pre>
 *
 * <p>Source: split: Hinkley, Biometrika 57 (1970); Welch, Biometrika 34 (1947); kurtosis: Bonett, Computational Statistics
 * and Data Analysis 50 (2006); from memory.
 */
public final class Changes {
    private Changes() {}

    /**
     * Finds the likeliest change of mean.
     *
     * @param values values in time order, at least twice the shortest segment, not all equal
     * @param options how it is looked for
     * @return the likeliest change, significant or not, or why there is none to give
     */
    public static Answer<ChangePoint> ofMean(double[] values, ChangeOptions options) {
        return searchable(values, options, "a change of mean").map(sample -> {
            var split = Split.best(sample, options);
            var before = Split.part(sample, 0, split.index());
            var after = Split.part(sample, split.index(), sample.size());
            double shift = after.mean() - before.mean();
            double margin = welchMargin(before, after, options.confidence())
                    * split.neighbours().meanFactor();
            return point(
                    ChangePoint.Kind.MEAN,
                    split,
                    before.mean(),
                    after.mean(),
                    new ChangePoint.Size(shift, new Interval(shift - margin, shift + margin, options.confidence())),
                    sample.size(),
                    options);
        });
    }

    /**
     * Finds the likeliest change of spread, after a significant change of mean, if there is one, was taken out.
     *
     * @param values values in time order, at least twice the shortest segment, not all equal
     * @param options how it is looked for
     * @return the likeliest change, significant or not, or why there is none to give
     */
    public static Answer<ChangePoint> ofSpread(double[] values, ChangeOptions options) {
        return searchable(values, options, "a change of spread").flatMap(sample -> {
            var mean = ofMean(values, options).orThrow();
            double middle = sample.median();
            var level = mean.significant()
                    ? Split.residuals(sample, mean.index())
                    : Arrays.stream(values).map(x -> x - middle).toArray();
            var scores = Arrays.stream(level).map(r -> Math.sqrt(Math.abs(r))).toArray();
            return searchable(scores, options, "a change of spread").flatMap(scored -> {
                var split = Split.best(scored, options);
                var flat = Sample.derived(level);
                var before = Split.part(flat, 0, split.index());
                var after = Split.part(flat, split.index(), flat.size());
                if (before.sd() == 0 || after.sd() == 0)
                    return Answer.missing(
                            Reason.NO_SPREAD,
                            String.format(
                                    Locale.ROOT,
                                    "the values %s value %d do not vary, so spreads cannot be compared as a ratio",
                                    before.sd() == 0 ? "before" : "from",
                                    split.index() + 1));
                double ratio = after.sd() / before.sd();
                double margin = ratioMargin(before, after, options.confidence());
                return Answer.of(point(
                        ChangePoint.Kind.SPREAD,
                        split,
                        before.sd(),
                        after.sd(),
                        new ChangePoint.Size(
                                ratio,
                                new Interval(
                                        ratio * Math.exp(-margin), ratio * Math.exp(margin), options.confidence())),
                        scored.size(),
                        options));
            });
        });
    }

    /**
     * Finds every significant change of mean by splitting again on either side of each.
     *
     * @param values values in time order
     * @param options how they are looked for
     * @return the changes in time order, indices counted in {@code values}, or why there are none to give
     */
    public static Answer<List<ChangePoint>> allOfMean(double[] values, ChangeOptions options) {
        return searchable(values, options, "changes of mean").map(sample -> {
            var found = new ArrayList<ChangePoint>();
            split(sample.toArray(), 0, options, found);
            return List.copyOf(found);
        });
    }

    private static void split(double[] part, int offset, ChangeOptions options, List<ChangePoint> found) {
        var change = ofMean(part, options).found().filter(ChangePoint::significant);
        if (change.isEmpty()) return;
        var c = change.get();
        split(Arrays.copyOfRange(part, 0, c.index()), offset, options, found);
        found.add(new ChangePoint(
                c.kind(),
                c.index() + offset,
                c.earliest() + offset,
                c.latest() + offset,
                c.before(),
                c.after(),
                c.size(),
                c.pValue(),
                c.significance(),
                c.n(),
                c.neighbours()));
        split(Arrays.copyOfRange(part, c.index(), part.length), offset + c.index(), options, found);
    }

    private static Answer<Sample> searchable(double[] values, ChangeOptions options, String purpose) {
        return Sample.varying(values, Math.max(4, 2 * options.shortestSegment()), purpose);
    }

    private static ChangePoint point(
            ChangePoint.Kind kind,
            Split split,
            double before,
            double after,
            ChangePoint.Size size,
            int n,
            ChangeOptions options) {
        return new ChangePoint(
                kind,
                split.index(),
                split.earliest(),
                split.latest(),
                before,
                after,
                size,
                split.pValue(),
                options.significance(),
                n,
                split.neighbours());
    }

    private static double welchMargin(Sample a, Sample b, double confidence) {
        double va = a.sd() * a.sd() / a.size();
        double vb = b.sd() * b.sd() / b.size();
        if (va + vb == 0) return 0;
        double share = va / (va + vb);
        double df = 1 / (share * share / (a.size() - 1) + (1 - share) * (1 - share) / (b.size() - 1));
        return TDistribution.of(df).inverseSurvivalProbability((1 - confidence) / 2) * Math.sqrt(va + vb);
    }

    private static double ratioMargin(Sample a, Sample b, double confidence) {
        double fourth = 0;
        double second = 0;
        for (var part : List.of(a, b)) {
            double mean = part.mean();
            double variance = part.sumOfSquares() / part.size();
            for (int i = 0; i < part.size(); i++) fourth += Math.pow((part.at(i) - mean) / Math.sqrt(variance), 4);
            second += part.size();
        }
        double kurtosis = Math.max(1.5, fourth / second);
        double z = NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - confidence) / 2);
        return z * Math.sqrt((kurtosis - 1) / 4 * (1.0 / a.size() + 1.0 / b.size()));
    }
}
