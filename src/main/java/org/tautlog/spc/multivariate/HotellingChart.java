package org.tautlog.spc.multivariate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.FDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Covariance;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartKind;
import org.tautlog.spc.chart.IndividualsOptions;
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
 * where items resemble the ones before, r the largest lag-1 autocorrelation of a feature:
 *   single items, phase 2: p (1 + 1 / m)(v - 1) / (v - p) F(1 - a; p, v - p),
 *      m = k (1 - r) / (1 + r), v = k (1 - r^2) / (1 + r^2), how many independent items tell the mean and the spread as well
 *   subgroups, both phases: times s (n - 1) / (n - s),  s = 1 + 2 sum of (1 - h / n) r^h, h from 1 to n - 1
 * </pre>
 *
 * <p>The covariance of single items is that of all of them, so their own limit (phase 1) needs no widening.
 *
 * <p>Source: allowance for r: variances of mean and spread of a first-order autoregressive series, from memory; limits: Tracy,
 * Young, Mason, Journal of Quality Technology 24 (1992); NIST/SEMATECH e-Handbook 6.5.4.3; Montgomery 11.3.
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

    /**
     * {@return how much items resemble the ones before, by feature; without a coefficient where there are too few}
     *
     * @param rows one row an item in time order, one column a feature
     */
    public static List<Autocorrelation> neighbours(double[][] rows) {
        return IntStream.range(0, rows.length == 0 ? 0 : rows[0].length)
                .mapToObj(j -> Arrays.stream(rows).mapToDouble(row -> row[j]).toArray())
                .map(feature -> Autocorrelation.ofDifferences(feature).found().orElse(Autocorrelation.none()))
                .toList();
    }

    private static double allowed(double[][] rows, HotellingOptions options) {
        return options.neighbours() == IndividualsOptions.Neighbours.IGNORE
                ? 0
                : neighbours(rows).stream()
                        .mapToDouble(Autocorrelation::allowed)
                        .max()
                        .orElse(0);
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
            double r = allowed(rows, options);
            double forMean = k * (1 - r) / (1 + r);
            double forSpread = Math.max(p + 1, k * (1 - r * r) / (1 + r * r));
            double two = p
                    * (1 + 1 / forMean)
                    * (forSpread - 1)
                    / (forSpread - p)
                    * FDistribution.of(p, forSpread - p).inverseSurvivalProbability(a);
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
            double r = allowed(
                    kept.stream()
                            .mapToObj(g -> subgroups[g])
                            .flatMap(Arrays::stream)
                            .toArray(double[][]::new),
                    options);
            double f = (double) p
                    * ofMeans(n, r)
                    * (n - 1)
                    / freedom
                    * FDistribution.of(p, freedom).inverseSurvivalProbability(a);
            return new HotellingLimits(covariance, n, k, a, (k - 1) * f, (k + 1) * f);
        });
    }

    /** How much farther means of n neighbours scatter than the spread within their subgroups tells. */
    private static double ofMeans(int n, double r) {
        double s = 1;
        for (int h = 1; h < n; h++) s += 2 * (1 - (double) h / n) * Math.pow(r, h);
        return s * (n - 1) / (n - s);
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
