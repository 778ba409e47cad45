package org.tautlog.spc.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Tests whether groups differ.
 *
 * <pre>
 * ANOVA:  F = (SSB / (k - 1)) / (SSW / (N - k))
 * Welch:  w = n / s^2, M = sum w m / sum w
 *         F = sum w (m - M)^2 / (k - 1) / (1 + 2 (k - 2) L / (k^2 - 1)),  L = sum (1 - w / sum w)^2 / (n - 1)
 *         degrees of freedom k - 1 and (k^2 - 1) / (3 L)
 * Brown-Forsythe: ANOVA of |x - median of its group|
 * Kruskal-Wallis: H = 12 / (N (N + 1)) sum R^2 / n - 3 (N + 1), over 1 - sum (t^3 - t) / (N^3 - N);  chi squared, k - 1
 * </pre>
 *
 * k groups of n values with mean m and standard deviation s, N in all; R sum of ranks; t length of a tie.
 *
 * <p>Groups of one value stand out by name in the reason: they have no spread of their own.
 *
 * <p>Source: NIST/SEMATECH e-Handbook 1.3.5.4 and 1.3.5.10; Welch, Biometrika 38 (1951); Kruskal and Wallis, JASA 47 (1952).
 */
public final class GroupTests {
    private GroupTests() {}

    /**
     * Compares means, spreads taken as equal.
     *
     * @param groups two or more groups, not empty, more values than groups
     * @return the test, or why there is none
     */
    public static Answer<GroupTest> anova(double[][] groups) {
        return checked(groups, 1).flatMap(samples -> anova(samples, GroupTest.Method.ANOVA));
    }

    /**
     * Compares means, each group with its own spread; for two groups it is Welch's t squared.
     *
     * @param groups two or more groups of at least 2 values
     * @return the test, or why there is none
     */
    public static Answer<GroupTest> welch(double[][] groups) {
        return checked(groups, 2).flatMap(samples -> {
            double weights = 0;
            double sum = 0;
            for (int g = 0; g < samples.size(); g++) {
                var sample = samples.get(g);
                if (sample.sd() == 0)
                    return Answer.missing(Reason.NO_SPREAD, "the values of group " + (g + 1) + " are all equal");
                weights += weight(sample);
                sum += weight(sample) * sample.mean();
            }
            double middle = sum / weights;
            int k = samples.size();
            double between = 0;
            double l = 0;
            for (var sample : samples) {
                between += weight(sample) * (sample.mean() - middle) * (sample.mean() - middle);
                l += Math.pow(1 - weight(sample) / weights, 2) / (sample.size() - 1);
            }
            double f = between / (k - 1) / (1 + 2.0 * (k - 2) * l / ((double) k * k - 1));
            double within = ((double) k * k - 1) / (3 * l);
            return Answer.of(new GroupTest(
                    GroupTest.Method.WELCH,
                    f,
                    k - 1,
                    within,
                    FDistribution.of(k - 1, within).survivalProbability(f),
                    k,
                    count(samples)));
        });
    }

    /**
     * Compares spreads.
     *
     * @param groups two or more groups of at least 2 values
     * @return the test, or why there is none
     */
    public static Answer<GroupTest> brownForsythe(double[][] groups) {
        return checked(groups, 2).flatMap(samples -> {
            var deviations = samples.stream()
                    .map(sample -> {
                        double median = sample.median();
                        return Sample.derived(Arrays.stream(sample.toArray())
                                .map(x -> Math.abs(x - median))
                                .toArray());
                    })
                    .toList();
            return anova(deviations, GroupTest.Method.BROWN_FORSYTHE);
        });
    }

    /**
     * Compares levels by ranks.
     *
     * @param groups two or more groups, not empty; the chi-squared p is good from 5 values a group on
     * @return the test, or why there is none
     */
    public static Answer<GroupTest> kruskalWallis(double[][] groups) {
        return checked(groups, 1).flatMap(samples -> {
            var all = samples.stream()
                    .flatMapToDouble(s -> Arrays.stream(s.toArray()))
                    .sorted()
                    .toArray();
            double n = all.length;
            double ties = 0;
            for (int i = 0, run; i < all.length; i += run) {
                run = 1;
                while (i + run < all.length && all[i + run] == all[i]) run++;
                ties += (double) run * run * run - run;
            }
            if (ties == n * n * n - n) return Answer.missing(Reason.NO_SPREAD, "all values are equal");
            double sum = 0;
            for (var sample : samples) {
                double ranks = 0;
                for (double x : sample.toArray()) ranks += rank(all, x);
                sum += ranks * ranks / sample.size();
            }
            double h = (12 / (n * (n + 1)) * sum - 3 * (n + 1)) / (1 - ties / (n * n * n - n));
            int k = samples.size();
            return Answer.of(new GroupTest(
                    GroupTest.Method.KRUSKAL_WALLIS,
                    Math.max(0, h),
                    k - 1,
                    0,
                    ChiSquaredDistribution.of(k - 1).survivalProbability(h),
                    k,
                    all.length));
        });
    }

    /**
     * Compares every pair of groups by Welch's t.
     *
     * @param groups two or more groups of at least 2 values
     * @param adjustment how the number of pairs is allowed for
     * @param confidence confidence of the bounds of each pair alone, above 0 and below 1
     * @return all pairs, first group first, or why there are none
     */
    public static Answer<List<PairComparison>> pairs(double[][] groups, Adjustment adjustment, double confidence) {
        return checked(groups, 2).flatMap(samples -> {
            var pairs = new ArrayList<PairComparison>();
            for (int i = 0; i < samples.size(); i++) {
                for (int j = i + 1; j < samples.size(); j++) {
                    if (samples.get(i).sd() == 0 && samples.get(j).sd() == 0)
                        return Answer.missing(
                                Reason.NO_SPREAD, "neither group " + (i + 1) + " nor group " + (j + 1) + " varies");
                    pairs.add(pair(i, samples.get(i), j, samples.get(j), adjustment, confidence));
                }
            }
            var adjusted = adjustment.adjust(
                    pairs.stream().mapToDouble(PairComparison::pValue).toArray());
            for (int i = 0; i < adjusted.length; i++) {
                var p = pairs.get(i);
                pairs.set(
                        i,
                        new PairComparison(
                                p.one(), p.other(), p.difference(), p.bounds(), p.pValue(), adjusted[i], adjustment));
            }
            return Answer.of(List.copyOf(pairs));
        });
    }

    private static PairComparison pair(int i, Sample a, int j, Sample b, Adjustment adjustment, double confidence) {
        double va = a.sd() * a.sd() / a.size();
        double vb = b.sd() * b.sd() / b.size();
        double share = va / (va + vb);
        double freedom = 1 / (share * share / (a.size() - 1) + (1 - share) * (1 - share) / (b.size() - 1));
        var law = TDistribution.of(freedom);
        double difference = b.mean() - a.mean();
        double margin = law.inverseSurvivalProbability((1 - confidence) / 2) * Math.sqrt(va + vb);
        double p = Math.min(1, 2 * law.survivalProbability(Math.abs(difference) / Math.sqrt(va + vb)));
        return new PairComparison(
                i, j, difference, new Interval(difference - margin, difference + margin, confidence), p, p, adjustment);
    }

    private static Answer<GroupTest> anova(List<Sample> samples, GroupTest.Method method) {
        int n = count(samples);
        int k = samples.size();
        if (n <= k)
            return Answer.missing(Reason.TOO_FEW, n + " values in " + k + " groups leave no spread within groups");
        var all = Sample.derived(samples.stream()
                .flatMapToDouble(s -> Arrays.stream(s.toArray()))
                .toArray());
        double middle = all.mean();
        double between = 0;
        double within = 0;
        for (var sample : samples) {
            within += sample.sumOfSquares();
            between += sample.size() * (sample.mean() - middle) * (sample.mean() - middle);
        }
        if (!(within > 0)) return Answer.missing(Reason.NO_SPREAD, "the values within each group are all equal");
        double f = between / (k - 1) / (within / (n - k));
        return Answer.of(new GroupTest(
                method, f, k - 1, n - k, FDistribution.of(k - 1, n - k).survivalProbability(f), k, n));
    }

    private static Answer<List<Sample>> checked(double[][] groups, int least) {
        if (groups.length == 0) return Answer.missing(Reason.EMPTY, "no groups to compare");
        if (groups.length == 1) return Answer.missing(Reason.TOO_FEW, "1 group; a comparison needs at least 2");
        var samples = new ArrayList<Sample>();
        for (int g = 0; g < groups.length; g++) {
            var sample = Sample.of(groups[g], least, "group " + (g + 1));
            if (sample.found().isEmpty()) return sample.flatMap(never -> Answer.of(List.of()));
            samples.add(sample.orThrow());
        }
        return Answer.of(samples);
    }

    private static int count(List<Sample> samples) {
        return samples.stream().mapToInt(Sample::size).sum();
    }

    private static double weight(Sample sample) {
        return sample.size() / (sample.sd() * sample.sd());
    }

    private static double rank(double[] sorted, double x) {
        int first = Arrays.binarySearch(sorted, x);
        int last = first;
        while (first > 0 && sorted[first - 1] == x) first--;
        while (last < sorted.length - 1 && sorted[last + 1] == x) last++;
        return (first + last) / 2.0 + 1;
    }
}
