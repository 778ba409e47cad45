package org.tautlog.spc.multivariate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.FDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Covariance;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartKind;
import org.tautlog.spc.chart.PhaseOne;
import org.tautlog.spc.chart.PhaseOneLoop;
import org.tautlog.spc.chart.Removed;
import org.tautlog.spc.chart.RunRule;

/**
 * Chart of Hotelling's T squared: several features of an item or a subgroup at once.
 *
 * <pre>
 * T2 = n (m - M)' S^-1 (m - M)         m mean of a subgroup of n, M mean of all, S mean of the subgroups' covariances
 * subgroups, k of n, p features:
 *   phase 1: p (k - 1)(n - 1) / (k n - k - p + 1) F(1 - a; p, k n - k - p + 1)
 *   phase 2: p (k + 1)(n - 1) / (k n - k - p + 1) F(1 - a; p, k n - k - p + 1)
 * single items, k:
 *   phase 1: (k - 1)^2 / k Beta(1 - a; p / 2, (k - p - 1) / 2)
 *   phase 2: p (k + 1)(k - 1) / (k^2 - k p) F(1 - a; p, k - p)
 * </pre>
 *
 * Source: Tracy, Young, Mason, Journal of Quality Technology 24 (1992); NIST/SEMATECH e-Handbook 6.5.4.3; Montgomery 11.3.
 */
public final class HotellingChart {
    private HotellingChart() {}

    /**
     * Limits from single items (phase 1).
     *
     * @param rows one row an item in time order, one column a feature; at least two more items than features
     * @param options how the chart is made
     * @return the limits with the items left out, or why there are none
     */
    public static Answer<PhaseOne<HotellingLimits>> phaseOne(double[][] rows, HotellingOptions options) {
        return PhaseOneLoop.settle(
                rows.length,
                options.phaseOne(),
                kept -> items(kept.stream().mapToObj(i -> rows[i]).toArray(double[][]::new), options),
                (limits, kept, round) -> beyond(rows, limits, kept, round));
    }

    /**
     * Limits from subgroups of equal size (phase 1).
     *
     * @param subgroups subgroups in time order, each of rows of features
     * @param options how the chart is made
     * @return the limits with the subgroups left out, or why there are none
     */
    public static Answer<PhaseOne<HotellingLimits>> phaseOneOfSubgroups(
            double[][][] subgroups, HotellingOptions options) {
        if (subgroups.length < 2)
            return Answer.missing(
                    subgroups.length == 0 ? Reason.EMPTY : Reason.TOO_FEW,
                    subgroups.length + " subgroups; limits need at least 2");
        int n = subgroups[0].length;
        for (var subgroup : subgroups)
            if (subgroup.length != n || n < 2)
                return Answer.missing(Reason.UNEQUAL, "subgroups must hold equally many items, at least 2");
        var means = new double[subgroups.length][];
        for (int i = 0; i < means.length; i++) means[i] = mean(subgroups[i]);
        return PhaseOneLoop.settle(
                subgroups.length,
                options.phaseOne(),
                kept -> ofSubgroups(subgroups, means, kept, options),
                (limits, kept, round) -> beyond(means, limits, kept, round));
    }

    /**
     * Holds frozen limits against points.
     *
     * @param limits the frozen limits
     * @param rows single items, or the means of subgroups, in time order
     * @param phase whether these are the points that the limits rest on or new ones
     * @return the chart, or why there is none; its centre line is the mean of T squared, p, in control
     */
    public static Answer<Chart> chart(HotellingLimits limits, double[][] rows, HotellingLimits.Phase phase) {
        if (rows.length == 0) return Answer.missing(Reason.EMPTY, "no points to chart");
        for (int i = 0; i < rows.length; i++) {
            if (rows[i].length != limits.covariance().features())
                return Answer.missing(
                        Reason.UNEQUAL,
                        "point " + (i + 1) + " holds " + rows[i].length + " features, the limits "
                                + limits.covariance().features());
            var row = org.tautlog.spc.Sample.of(rows[i], 1, "point " + (i + 1));
            if (row.found().isEmpty()) return row.flatMap(never -> Answer.missing(Reason.EMPTY, ""));
        }
        var values = IntStream.range(0, rows.length)
                .mapToDouble(i -> tSquared(limits, rows[i]))
                .toArray();
        double upper = limits.upper(phase);
        double centre = Math.min(upper, limits.covariance().features());
        var lines = new Chart.Lines(0, centre, upper, upper - centre, limits.subgroupSize());
        return Answer.of(Chart.draw(ChartKind.T_SQUARED, values, i -> lines, RunRule.limitsOnly()));
    }

    /**
     * {@return each feature's part in the T squared of a point: what the point would lose without the feature}
     *
     * @param limits the frozen limits
     * @param row a single item or the mean of a subgroup
     */
    public static double[] parts(HotellingLimits limits, double[] row) {
        var parts = limits.covariance().parts(row);
        for (int j = 0; j < parts.length; j++) parts[j] *= limits.subgroupSize();
        return parts;
    }

    private static double tSquared(HotellingLimits limits, double[] row) {
        return limits.subgroupSize() * limits.covariance().distanceSquared(row);
    }

    private static Answer<HotellingLimits> items(double[][] rows, HotellingOptions options) {
        return Covariance.of(rows).flatMap(covariance -> {
            int k = rows.length;
            int p = covariance.features();
            if (k < p + 2)
                return Answer.missing(
                        Reason.TOO_FEW, k + " items; limits for " + p + " features need at least " + (p + 2));
            double a = options.falseAlarm();
            double one = (k - 1.0)
                    * (k - 1)
                    / k
                    * BetaDistribution.of(p / 2.0, (k - p - 1) / 2.0).inverseSurvivalProbability(a);
            double two = p
                    * (k + 1.0)
                    * (k - 1)
                    / ((double) k * k - (double) k * p)
                    * FDistribution.of(p, k - p).inverseSurvivalProbability(a);
            return Answer.of(new HotellingLimits(covariance, 1, k, a, one, two));
        });
    }

    private static Answer<HotellingLimits> ofSubgroups(
            double[][][] subgroups, double[][] means, BitSet kept, HotellingOptions options) {
        int k = kept.cardinality();
        int n = subgroups[0].length;
        int p = means[0].length;
        int freedom = k * n - k - p + 1;
        if (freedom < 1)
            return Answer.missing(Reason.TOO_FEW, k + " subgroups of " + n + " are too few for " + p + " features");
        var centre = mean(kept.stream().mapToObj(i -> means[i]).toArray(double[][]::new));
        var s = new double[p][p];
        for (int g = kept.nextSetBit(0); g >= 0; g = kept.nextSetBit(g + 1)) {
            for (var row : subgroups[g]) {
                if (row.length != p) return Answer.missing(Reason.UNEQUAL, "items must hold equally many features");
                for (int i = 0; i < p; i++)
                    for (int j = 0; j < p; j++)
                        s[i][j] += (row[i] - means[g][i]) * (row[j] - means[g][j]) / (n - 1) / k;
            }
        }
        return Covariance.of(centre, s).map(covariance -> {
            double a = options.falseAlarm();
            double f = (double) p
                    * (n - 1)
                    / freedom
                    * FDistribution.of(p, freedom).inverseSurvivalProbability(a);
            return new HotellingLimits(covariance, n, k, a, (k - 1) * f, (k + 1) * f);
        });
    }

    private static double[] mean(double[][] rows) {
        var mean = new double[rows[0].length];
        for (var row : rows)
            for (int j = 0; j < Math.min(mean.length, row.length); j++) mean[j] += row[j] / rows.length;
        return mean;
    }

    private static List<Removed> beyond(double[][] rows, HotellingLimits limits, BitSet kept, int round) {
        var beyond = new ArrayList<Removed>();
        kept.stream().forEach(i -> {
            double t2 = tSquared(limits, rows[i]);
            if (t2 > limits.phaseOneLimit())
                beyond.add(new Removed(ChartKind.T_SQUARED, i, t2, 0, limits.phaseOneLimit(), round));
        });
        return beyond;
    }
}
