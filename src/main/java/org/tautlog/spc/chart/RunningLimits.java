package org.tautlog.spc.chart;

import java.util.Arrays;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Moments;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Limits of single values from a series of any length in one pass and bounded memory: mean, mean moving range, and the
 * resemblance of neighbours among the first values. No value is left out of them. Formulas: {@link IndividualsChart}. Not
 * thread-safe.
 */
public final class RunningLimits {
    /** How many first values tell whether neighbours resemble each other. */
    public static final int MOST_FOR_NEIGHBOURS = 100_000;

    private static final int LEAST = 3;

    private final Moments values = new Moments();
    private final Moments ranges = new Moments();
    private double[] first = new double[1 << 10];
    private double before;

    /** Starts with no value. */
    public RunningLimits() {}

    /**
     * Takes the next value.
     *
     * @param x a finite value
     */
    public void accept(double x) {
        if (!Double.isFinite(x)) throw new IllegalArgumentException("x is " + x + "; it must be a finite number");
        int place = (int) Math.min(values.count(), MOST_FOR_NEIGHBOURS);
        if (place < MOST_FOR_NEIGHBOURS) {
            if (place == first.length) first = Arrays.copyOf(first, Math.min(2 * place, MOST_FOR_NEIGHBOURS));
            first[place] = x;
        }
        if (place > 0) ranges.add(Math.abs(x - before));
        values.add(x);
        before = x;
    }

    /**
     * {@return the limits from all values so far, or why there are none}
     *
     * @param options how the chart is made; the spread is that of the mean moving range
     */
    public Answer<IndividualsLimits> limits(IndividualsOptions options) {
        if (options.spread() != IndividualsSpread.MEAN_MOVING_RANGE)
            throw new IllegalArgumentException("spread is " + options.spread() + "; one pass gives MEAN_MOVING_RANGE");
        int n = Math.toIntExact(values.count());
        if (n < LEAST)
            return Answer.missing(Reason.TOO_FEW, n + " values; limits of single values need at least " + LEAST);
        double shortSigma = ranges.mean().orThrow() / ChartConstants.of(2).d2();
        if (!(shortSigma > Sample.LEAST_SPREAD)) return Answer.missing(Reason.NO_SPREAD, "all values are equal");
        var neighbours = Autocorrelation.ofDifferences(Arrays.copyOf(first, Math.min(n, MOST_FOR_NEIGHBOURS)))
                .found()
                .orElse(Autocorrelation.none());
        return Answer.of(IndividualsLimits.of(values.mean().orThrow(), shortSigma, n, neighbours, options));
    }
}
