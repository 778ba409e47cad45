package org.tautlog.spc.count;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartKind;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOne;
import org.tautlog.spc.chart.PhaseOneLoop;
import org.tautlog.spc.chart.Removed;
import org.tautlog.spc.chart.RunRule;

/**
 * Charts of counts.
 *
 * <pre>
 * rate = sum of counts / sum of amounts
 * p, np:  limits = rate +- width sqrt(rate (1 - rate) / amount), within 0 and 1;   np: times the amount
 * c, u:   limits = rate +- width sqrt(rate / amount), not below 0;                 c: the amount is 1
 * Laney:  the same distance times the mean moving range of z over d2(2),  z = (point - rate) / its chance sigma
 * </pre>
 *
 * <p>With many items a point, a rate that breathes from day to day gives false signals on p and u; Laney's charts measure that
 * breath, and where z resembles the one before (lag-1 autocorrelation r, from differences, above its noise bound) divide it by
 * sqrt(1 - r). The plain charts know chance alone. A point without a single count, or nothing but counts, gives limits of no width and a reason.
 *
 * <p>Source: NIST/SEMATECH e-Handbook 6.3.3; Laney, Quality Engineering 14 (2002), from memory.
 */
public final class CountChart {
    private static final double PAIR_D2 = 2 / Math.sqrt(Math.PI);

    private CountChart() {}

    /**
     * Limits from data (phase 1).
     *
     * @param model what is counted
     * @param counts counts in time order, not negative
     * @param amounts items or units behind each count, above 0; all equal for np and c
     * @param options how the chart is made
     * @return the limits with the points left out, or why there are none
     */
    public static Answer<PhaseOne<CountLimits>> phaseOne(
            CountModel model, double[] counts, double[] amounts, CountOptions options) {
        return checked(model, counts, amounts)
                .flatMap(ok -> counts.length < 2
                        ? Answer.missing(Reason.TOO_FEW, "1 point; limits of counts need at least 2")
                        : PhaseOneLoop.settle(
                                counts.length,
                                options.phaseOne(),
                                kept -> limits(model, counts, amounts, kept, options),
                                (limits, kept, round) -> beyond(counts, amounts, limits, kept, round)));
    }

    /**
     * Holds frozen limits against data (phase 2), or draws phase 1's own data.
     *
     * @param limits the frozen limits
     * @param counts counts in time order, not negative
     * @param amounts items or units behind each count, above 0
     * @param rules the run rules switched on
     * @return the chart, or why there is none
     */
    public static Answer<Chart> chart(CountLimits limits, double[] counts, double[] amounts, Set<RunRule> rules) {
        return checked(limits.model(), counts, amounts)
                .map(ok -> Chart.draw(
                        ChartKind.COUNT, plotted(limits, counts, amounts), i -> limits.lines(amounts[i]), rules));
    }

    private static double[] plotted(CountLimits limits, double[] counts, double[] amounts) {
        var values = new double[counts.length];
        for (int i = 0; i < values.length; i++) values[i] = limits.plotted(counts[i], amounts[i]);
        return values;
    }

    private static Answer<Boolean> checked(CountModel model, double[] counts, double[] amounts) {
        if (counts.length != amounts.length)
            return Answer.missing(
                    Reason.UNEQUAL, counts.length + " counts and " + amounts.length + " amounts; each needs the other");
        return Sample.of(counts, 1, "a chart of counts")
                .flatMap(c -> Sample.of(amounts, 1, "amounts behind counts"))
                .flatMap(a -> {
                    for (int i = 0; i < counts.length; i++) {
                        var refused = model.refuses(counts[i], amounts[i]);
                        if (refused.isPresent())
                            return Answer.missing(Reason.OUT_OF_DOMAIN, "point " + (i + 1) + " " + refused.get());
                    }
                    if (model.equalAmounts() && a.min() < a.max())
                        return Answer.missing(
                                Reason.UNEQUAL,
                                "amounts run from " + a.min() + " to " + a.max()
                                        + "; this chart needs equal ones, a fraction or a rate does not");
                    return Answer.of(true);
                });
    }

    private static Answer<CountLimits> limits(
            CountModel model, double[] counts, double[] amounts, BitSet kept, CountOptions options) {
        double rate = kept.stream().mapToDouble(i -> counts[i]).sum()
                / kept.stream().mapToDouble(i -> amounts[i]).sum();
        if (rate == 0 || (model.binomial() && rate == 1))
            return Answer.missing(
                    Reason.NO_SPREAD, rate == 0 ? "nothing was counted at any point" : "every item was counted");
        if (!model.laney()) return Answer.of(new CountLimits(model, rate, options.width(), 1, kept.cardinality()));
        var z = kept.stream()
                .mapToDouble(i -> (counts[i] / amounts[i] - rate)
                        / Math.sqrt((model.binomial() ? rate * (1 - rate) : rate) / amounts[i]))
                .toArray();
        var ranges = new double[Math.max(0, z.length - 1)];
        for (int i = 0; i < ranges.length; i++) ranges[i] = Math.abs(z[i + 1] - z[i]);
        double scatter = Arrays.stream(ranges).average().orElse(0) / PAIR_D2;
        if (!(scatter > 0)) return Answer.missing(Reason.NO_SPREAD, "neighbouring points do not differ");
        var neighbours = Autocorrelation.ofDifferences(z).found().orElse(Autocorrelation.none());
        double factor =
                options.neighbours() == IndividualsOptions.Neighbours.WIDEN ? neighbours.movingRangeFactor() : 1;
        return Answer.of(new CountLimits(model, rate, options.width(), scatter * factor, kept.cardinality()));
    }

    private static List<Removed> beyond(double[] counts, double[] amounts, CountLimits limits, BitSet kept, int round) {
        var beyond = new ArrayList<Removed>();
        kept.stream().forEach(i -> {
            var lines = limits.lines(amounts[i]);
            double value = limits.plotted(counts[i], amounts[i]);
            if (lines.beyond(value))
                beyond.add(new Removed(ChartKind.COUNT, i, value, lines.lower(), lines.upper(), round));
        });
        return beyond;
    }
}
