package org.tautlog.spc.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Chart of single values with their moving ranges.
 *
 * <pre>
 * limits = mean +- width sigma,  sigma = mean moving range / d2(2)  [other estimates: IndividualsSpread]
 * moving range: lower 0, upper = mean moving range (1 + width d3(2) / d2(2))
 * </pre>
 *
 * <ul>
 *   <li>A moving range counts only where both its values were kept.
 *   <li>Values that are all equal, fewer than 3, or not finite give no limits but a reason.
 *   <li>Where the lag-1 autocorrelation r, from differences, lies above its noise bound, a moving-range sigma is divided by
 *       sqrt(1 - r); it needs 20 values.
 * </ul>
 *
 * Source: NIST/SEMATECH e-Handbook 6.3.2.2; widening: from memory, for a first-order autoregressive series.
 */
public final class IndividualsChart {
    private static final ChartConstants PAIR = ChartConstants.of(2);
    /** Median of the range of two standard normal values: sqrt(2) times the upper quartile of the normal. */
    private static final double PAIR_MEDIAN = Math.sqrt(2) * 0.674489750196082;

    private static final double TO_SIGMA = 1 / 0.674489750196082;
    private static final int LEAST = 3;

    private IndividualsChart() {}

    /**
     * Limits from data (phase 1).
     *
     * @param values values in time order, at least 3, not all equal
     * @param options how the chart is made
     * @return the limits with the points left out, or why there are none
     */
    public static Answer<PhaseOne<IndividualsLimits>> phaseOne(double[] values, IndividualsOptions options) {
        return Sample.varying(values, LEAST, "a chart of single values").flatMap(sample -> {
            var x = sample.toArray();
            return PhaseOneLoop.settle(
                    x.length,
                    options.phaseOne(),
                    kept -> limits(x, kept, options),
                    (limits, kept, round) -> beyond(x, limits, kept, round));
        });
    }

    /**
     * Holds frozen limits against data (phase 2), or draws phase 1's own data.
     *
     * @param limits the frozen limits
     * @param values values in time order, at least 1
     * @param rules the run rules switched on; all watch the single values, that of the limits the moving ranges too
     * @return both charts, or why there are none; the first moving range belongs to the second value
     */
    public static Answer<ChartPair> chart(IndividualsLimits limits, double[] values, Set<RunRule> rules) {
        return Sample.of(values, 1, "a chart of single values").map(sample -> {
            var x = sample.toArray();
            var lines = limits.lines();
            var spreadLines = limits.movingRangeLines();
            var ranges = new double[x.length - 1];
            for (int i = 1; i < x.length; i++) ranges[i - 1] = Math.abs(x[i] - x[i - 1]);
            return new ChartPair(
                    Chart.draw(ChartKind.INDIVIDUALS, x, i -> lines, rules),
                    Chart.draw(ChartKind.MOVING_RANGE, ranges, i -> spreadLines, RunRule.ofSpread(rules))
                            .from(1));
        });
    }

    private static Answer<IndividualsLimits> limits(double[] x, BitSet kept, IndividualsOptions options) {
        var values = kept.stream().mapToDouble(i -> x[i]).toArray();
        var ranges = kept.stream()
                .filter(i -> i > 0 && kept.get(i - 1))
                .mapToDouble(i -> Math.abs(x[i] - x[i - 1]))
                .toArray();
        if (ranges.length == 0)
            return Answer.missing(Reason.TOO_FEW, "no two neighbouring values are left for a moving range");
        return Sample.varying(values, LEAST, "a chart of single values").flatMap(sample -> {
            double shortSigma = sigma(sample, ranges, options.spread());
            if (!(shortSigma > Sample.LEAST_SPREAD))
                return Answer.missing(
                        Reason.NO_SPREAD, "more than half of the values repeat, so the chosen spread estimate is 0");
            var neighbours = Autocorrelation.ofDifferences(values).found().orElse(Autocorrelation.none());
            return Answer.of(IndividualsLimits.of(
                    options.spread() == IndividualsSpread.MEDIAN_DEVIATION ? sample.median() : sample.mean(),
                    shortSigma,
                    values.length,
                    neighbours,
                    options));
        });
    }

    private static double sigma(Sample sample, double[] ranges, IndividualsSpread spread) {
        return switch (spread) {
            case MEAN_MOVING_RANGE -> Arrays.stream(ranges).average().orElseThrow() / PAIR.d2();
            case MEDIAN_MOVING_RANGE -> Sample.derived(ranges).median() / PAIR_MEDIAN;
            case MEDIAN_DEVIATION -> sample.medianDeviation() * TO_SIGMA;
            case STANDARD_DEVIATION -> sample.sd() / ChartConstants.c4(sample.size());
        };
    }

    private static List<Removed> beyond(double[] x, IndividualsLimits limits, BitSet kept, int round) {
        var beyond = new ArrayList<Removed>();
        kept.stream()
                .filter(i -> x[i] > limits.upper() || x[i] < limits.lower())
                .forEach(i ->
                        beyond.add(new Removed(ChartKind.INDIVIDUALS, i, x[i], limits.lower(), limits.upper(), round)));
        return beyond;
    }
}
