package org.tautlog.spc.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Charts of subgroup means with ranges or standard deviations; subgroups may differ in size.
 *
 * <pre>
 * means:   centre +- width sigma / sqrt(n),  centre = sum of all values / their number
 * ranges:  d2(n) sigma +- width d3(n) sigma, not below 0
 * deviations: c4(n) sigma +- width sqrt(1 - c4(n)^2) sigma, not below 0
 * sigma from ranges:     sum h R / d2(n) / sum h,  h = d2(n)^2 / d3(n)^2
 * sigma from deviations: sum h s / c4(n) / sum h,  h = c4(n)^2 / (1 - c4(n)^2)
 * pooled: sqrt(sum (n - 1) s^2 / sum (n - 1)) / c4(1 + sum (n - 1))
 * </pre>
 *
 * <p>With equal sizes the first two are the ordinary mean range over d2 and mean deviation over c4. Where the values in time
 * order have a lag-1 autocorrelation r above its noise bound, the limits of the means widen by sqrt((1 + r) / (1 - r)).
 *
 * <p>Source: ISO 7870-2; weights for unequal sizes: Burr, Journal of Quality Technology 1 (1969), from memory.
 */
public final class SubgroupChart {
    private static final int LEAST_SUBGROUPS = 2;
    private static final int LEAST_SIZE = 2;

    private SubgroupChart() {}

    /**
     * Limits from data (phase 1). A subgroup is left out when its mean or its spread lies beyond.
     *
     * @param subgroups subgroups in time order, at least 2, of at least 2 values each, not all values equal
     * @param options how the charts are made
     * @return the limits with the subgroups left out, or why there are none
     */
    public static Answer<PhaseOne<SubgroupLimits>> phaseOne(double[][] subgroups, SubgroupOptions options) {
        if (subgroups.length == 1)
            return Answer.missing(Reason.TOO_FEW, "1 subgroup; limits need at least " + LEAST_SUBGROUPS);
        return checked(subgroups).flatMap(groups -> {
            var constants = constants(groups);
            return PhaseOneLoop.settle(
                    groups.size(),
                    options.phaseOne(),
                    kept -> limits(groups, constants, kept, options),
                    (limits, kept, round) -> beyond(groups, constants, limits, kept, round));
        });
    }

    /**
     * Holds frozen limits against data (phase 2), or draws phase 1's own data.
     *
     * @param limits the frozen limits
     * @param subgroups subgroups in time order, at least 1, of at least 2 values each
     * @param rules the run rules that watch the means; that of the limits watches the spread too
     * @return both charts, or why there are none
     */
    public static Answer<ChartPair> chart(SubgroupLimits limits, double[][] subgroups, Set<RunRule> rules) {
        return checked(subgroups).map(groups -> {
            var constants = constants(groups);
            var means = groups.stream().mapToDouble(Sample::mean).toArray();
            var spreads = groups.stream()
                    .mapToDouble(group -> plotted(group, limits.spread()))
                    .toArray();
            var kind = limits.spread() == SubgroupSpread.RANGE ? ChartKind.RANGE : ChartKind.STANDARD_DEVIATION;
            return new ChartPair(
                    Chart.draw(
                            ChartKind.MEAN,
                            means,
                            i -> limits.meanLines(groups.get(i).size()),
                            rules),
                    Chart.draw(
                            kind,
                            spreads,
                            i -> limits.spreadLines(of(constants, groups.get(i))),
                            RunRule.ofSpread(rules)));
        });
    }

    private static Answer<List<Sample>> checked(double[][] subgroups) {
        if (subgroups.length == 0) return Answer.missing(Reason.EMPTY, "no subgroups to chart");
        var groups = new ArrayList<Sample>();
        for (int i = 0; i < subgroups.length; i++) {
            var group = Sample.of(subgroups[i], LEAST_SIZE, "subgroup " + (i + 1));
            if (group.found().isEmpty()) return group.flatMap(never -> Answer.of(List.of()));
            groups.add(group.orThrow());
        }
        return Answer.of(groups);
    }

    private static Map<Integer, ChartConstants> constants(List<Sample> groups) {
        var constants = new TreeMap<Integer, ChartConstants>();
        groups.forEach(group -> constants.computeIfAbsent(group.size(), ChartConstants::of));
        return constants;
    }

    private static ChartConstants of(Map<Integer, ChartConstants> constants, Sample group) {
        return java.util.Objects.requireNonNull(constants.get(group.size()));
    }

    private static double plotted(Sample group, SubgroupSpread spread) {
        return spread == SubgroupSpread.RANGE ? group.max() - group.min() : group.sd();
    }

    private static Answer<SubgroupLimits> limits(
            List<Sample> groups, Map<Integer, ChartConstants> constants, BitSet kept, SubgroupOptions options) {
        var used = kept.stream().mapToObj(groups::get).toList();
        if (used.size() < LEAST_SUBGROUPS)
            return Answer.missing(Reason.TOO_FEW, used.size() + " subgroups; limits need at least " + LEAST_SUBGROUPS);
        var values = used.stream()
                .flatMapToDouble(group -> Arrays.stream(group.toArray()))
                .toArray();
        double sigma = sigma(used, constants, options.spread());
        if (!(sigma > Sample.LEAST_SPREAD))
            return Answer.missing(Reason.NO_SPREAD, "values within each subgroup are all equal");
        var neighbours = Autocorrelation.ofDifferences(values).found().orElse(Autocorrelation.none());
        boolean widen = options.neighbours() == IndividualsOptions.Neighbours.WIDEN;
        return Sample.of(values, 1, "a centre line")
                .map(all -> new SubgroupLimits(
                        all.mean(),
                        sigma,
                        options.width(),
                        options.spread(),
                        widen ? neighbours.meanFactor() : 1,
                        used.size(),
                        values.length,
                        neighbours));
    }

    private static double sigma(List<Sample> groups, Map<Integer, ChartConstants> constants, SubgroupSpread spread) {
        double sum = 0;
        double weights = 0;
        for (var group : groups) {
            var c = of(constants, group);
            double plotted = plotted(group, spread);
            switch (spread) {
                case RANGE -> {
                    double weight = c.d2() * c.d2() / (c.d3() * c.d3());
                    sum += weight * plotted / c.d2();
                    weights += weight;
                }
                case STANDARD_DEVIATION -> {
                    double weight = c.c4() * c.c4() / (1 - c.c4() * c.c4());
                    sum += weight * plotted / c.c4();
                    weights += weight;
                }
                case POOLED -> {
                    sum += group.sumOfSquares();
                    weights += group.size() - 1.0;
                }
            }
        }
        return spread == SubgroupSpread.POOLED
                ? Math.sqrt(sum / weights) / ChartConstants.c4((int) weights + 1)
                : sum / weights;
    }

    private static List<Removed> beyond(
            List<Sample> groups,
            Map<Integer, ChartConstants> constants,
            SubgroupLimits limits,
            BitSet kept,
            int round) {
        var kind = limits.spread() == SubgroupSpread.RANGE ? ChartKind.RANGE : ChartKind.STANDARD_DEVIATION;
        var beyond = new ArrayList<Removed>();
        kept.stream().forEach(i -> {
            var group = groups.get(i);
            var means = limits.meanLines(group.size());
            var spreads = limits.spreadLines(of(constants, group));
            double spread = plotted(group, limits.spread());
            if (means.beyond(group.mean()))
                beyond.add(new Removed(ChartKind.MEAN, i, group.mean(), means.lower(), means.upper(), round));
            else if (spreads.beyond(spread))
                beyond.add(new Removed(kind, i, spread, spreads.lower(), spreads.upper(), round));
        });
        return beyond;
    }
}
