package org.tautlog.spc.outlier;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Covariance;
import org.tautlog.spc.Reason;

/**
 * Distance of each item from the centre of several features, by a covariance that strays cannot bend: minimum covariance
 * determinant, reweighted.
 *
 * <pre>{@code
 * the h items whose covariance has the least determinant, found by concentration steps from random starts;
 * covariance times h/n / P(chi2(p+2) <= q),  q the h/n point of chi2(p);
 * again over the items within the 97.5 % point of chi2(p), times 0.975 / P(chi2(p+2) <= q975)
 * flagged: D^2 above the 1 - falseAlarm point of chi2(p)
 * }</pre>
 *
 * <ul>
 *   <li>The chi-squared limit is right for many items; with fewer than about 20 p items it flags too readily, and fewer than 5 p
 *       give no answer.
 *   <li>The same values and seed give the same answer.
 * </ul>
 *
 * Source: Rousseeuw and Van Driessen, Technometrics 41 (1999); factors: Croux and Haesbroeck, Journal of Multivariate Analysis
 * 71 (1999); from memory.
 *
 * @param covariance the robust centre and covariance
 * @param limit the squared distance above which an item is flagged
 * @param distances squared distance of every item, in their order
 * @param options how they were made
 */
public record RobustDistance(Covariance covariance, double limit, List<Double> distances, RobustOptions options) {
    private static final double REWEIGHT = 0.975;
    private static final int MOST_STEPS = 100;
    private static final int FIRST_STEPS = 2;
    private static final int FINALISTS = 10;
    private static final int ITEMS_PER_FEATURE = 5;

    /** Copies the distances. */
    public RobustDistance {
        distances = List.copyOf(distances);
    }

    /**
     * Measures items.
     *
     * @param rows one row an item, one column a feature; at least 5 items a feature
     * @param options how it is done
     * @return the distances, or why there are none
     */
    public static Answer<RobustDistance> of(double[][] rows, RobustOptions options) {
        return Covariance.of(rows).flatMap(plain -> {
            int n = rows.length;
            int p = plain.features();
            if (n < ITEMS_PER_FEATURE * p)
                return Answer.missing(
                        Reason.TOO_FEW,
                        n + " items; " + p + " features need at least " + ITEMS_PER_FEATURE * p
                                + " for a robust covariance");
            int h = Math.max((n + p + 1) / 2, (int) Math.floor(options.share() * n));
            return search(rows, h, options)
                    .map(raw -> Answer.of(reweighted(rows, raw, (double) h / n, options)))
                    .orElseGet(
                            () -> Answer.missing(
                                    Reason.NO_SPREAD,
                                    "more than half of the items lie on a line or plane, so no covariance of theirs can scale"));
        });
    }

    /** {@return the places of the flagged items, from 0} */
    public List<Integer> flagged() {
        return IntStream.range(0, distances.size())
                .filter(i -> distances.get(i) > limit)
                .boxed()
                .toList();
    }

    /**
     * {@return each feature's part in the squared distance of an item: what it would lose without the feature}
     *
     * @param row the item
     */
    public double[] parts(double[] row) {
        return covariance.parts(row);
    }

    private static Optional<Covariance> search(double[][] rows, int h, RobustOptions options) {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(options.seed());
        int p = rows[0].length;
        var shuffled = PermutationSampler.natural(rows.length);
        var candidates = new ArrayList<Covariance>();
        for (int start = 0; start < options.starts(); start++) {
            PermutationSampler.shuffle(random, shuffled);
            first(rows, shuffled, p)
                    .flatMap(c -> concentrate(rows, h, c, FIRST_STEPS))
                    .ifPresent(candidates::add);
        }
        candidates.sort(Comparator.comparingDouble(Covariance::logDeterminant));
        return candidates.stream()
                .limit(FINALISTS)
                .flatMap(c -> concentrate(rows, h, c, MOST_STEPS).stream())
                .min(Comparator.comparingDouble(Covariance::logDeterminant));
    }

    /** The smallest leading part of the shuffled items that spans all features. */
    private static Optional<Covariance> first(double[][] rows, int[] shuffled, int p) {
        for (int size = p + 1; size <= Math.min(rows.length, 4 * p + 4); size++) {
            var found = Covariance.of(Arrays.stream(shuffled, 0, size)
                            .mapToObj(i -> rows[i])
                            .toArray(double[][]::new))
                    .found();
            if (found.isPresent()) return found;
        }
        return Optional.empty();
    }

    private static Optional<Covariance> concentrate(double[][] rows, int h, Covariance start, int steps) {
        var best = start;
        double before = Double.POSITIVE_INFINITY;
        for (int step = 0; step < steps; step++) {
            var next = Covariance.of(nearest(rows, h, best)).found();
            if (next.isEmpty()) return Optional.empty();
            best = next.get();
            if (before - best.logDeterminant() < 1e-12 * Math.max(1, Math.abs(before)) && step > 0) break;
            before = best.logDeterminant();
        }
        return Optional.of(best);
    }

    private static double[][] nearest(double[][] rows, int h, Covariance covariance) {
        var order = new Item[rows.length];
        for (int i = 0; i < order.length; i++) order[i] = new Item(i, covariance.distanceSquared(rows[i]));
        Arrays.sort(order, Comparator.comparingDouble(Item::distance).thenComparingInt(Item::index));
        return Arrays.stream(order, 0, h).map(item -> rows[item.index()]).toArray(double[][]::new);
    }

    private record Item(int index, double distance) {}

    private static RobustDistance reweighted(double[][] rows, Covariance raw, double share, RobustOptions options) {
        int p = raw.features();
        var chi = ChiSquaredDistribution.of(p);
        var scaled = raw.scaled(consistency(p, share));
        double near = chi.inverseCumulativeProbability(REWEIGHT);
        var inner = Arrays.stream(rows)
                .filter(row -> scaled.distanceSquared(row) <= near)
                .toArray(double[][]::new);
        var last = Covariance.of(inner)
                .found()
                .map(c -> c.scaled(consistency(p, REWEIGHT)))
                .orElse(scaled);
        return new RobustDistance(
                last,
                chi.inverseSurvivalProbability(options.falseAlarm()),
                Arrays.stream(rows).map(last::distanceSquared).toList(),
                options);
    }

    private static double consistency(int p, double share) {
        if (share >= 1) return 1;
        double q = ChiSquaredDistribution.of(p).inverseCumulativeProbability(share);
        return share / GammaDistribution.of(p / 2.0 + 1, 2).cumulativeProbability(q);
    }
}
