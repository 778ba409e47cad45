package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.compare.Adjustment;
import org.tautlog.spc.compare.MeanOfDifferences;

/**
 * One bolt lot compared with all others within the same spindles: what follows the lot is seen on every spindle that turned
 * it, what follows a spindle on one. Lots follow one another in time, so a slow drift of all spindles looks alike.
 *
 * @param lot the bolt lot
 * @param feature what was compared
 * @param tightenings how many of the lot
 * @param spindles how many spindles turned enough of it and of others to compare
 * @param alike on how many of them it differs in the direction of the mean
 * @param difference mean over the spindles of the lot's median less the others' median, in the feature's unit
 * @param bounds bounds of the difference
 * @param adjusted p value with all lots and features compared allowed for
 */
public record LotEffect(
        String lot,
        ChartedFeature feature,
        int tightenings,
        int spindles,
        int alike,
        double difference,
        Interval bounds,
        double adjusted) {
    /** Adjusted p value at or below which a lot is said to differ. */
    public static final double LEVEL = 0.01;

    private static final int ENOUGH = 5;

    private record Compared(
            String lot, ChartedFeature feature, int n, List<Double> differences, MeanOfDifferences mean) {}

    public LotEffect {
        Objects.requireNonNull(lot, "lot");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(bounds, "bounds");
        if (alike < 0 || alike > spindles) {
            throw new IllegalArgumentException(
                    "alike is " + alike + " of " + spindles + " spindles; it must lie from 0 to that");
        }
    }

    /** {@return whether the lot differs, with all comparisons allowed for} */
    public boolean holds() {
        return adjusted <= LEVEL;
    }

    /** Every lot and feature that could be compared, surest difference first. */
    static List<LotEffect> of(List<StreamChart> charts) {
        var compared = new ArrayList<Compared>();
        for (var feature : ChartedFeature.values()) {
            var places = charts.stream()
                    .filter(chart -> chart.feature() == feature)
                    .map(LotPlaces::of)
                    .toList();
            var lots = new TreeSet<String>();
            places.forEach(chart -> lots.addAll(chart.lots()));
            lots.forEach(lot -> compare(lot, feature, places).found().ifPresent(compared::add));
        }
        var adjusted = Adjustment.BENJAMINI_HOCHBERG.adjust(
                compared.stream().mapToDouble(one -> one.mean().pValue()).toArray());
        var effects = new ArrayList<LotEffect>();
        for (int i = 0; i < adjusted.length; i++) {
            var one = compared.get(i);
            double mean = one.mean().mean();
            effects.add(new LotEffect(
                    one.lot(),
                    one.feature(),
                    one.n(),
                    one.differences().size(),
                    (int) one.differences().stream().filter(d -> d * mean > 0).count(),
                    mean,
                    one.mean().bounds(),
                    adjusted[i]));
        }
        effects.sort(Comparator.comparingDouble(LotEffect::adjusted));
        return List.copyOf(effects);
    }

    private static Answer<Compared> compare(String lot, ChartedFeature feature, List<LotPlaces> charts) {
        var differences = new ArrayList<Double>();
        int tightenings = 0;
        for (var chart : charts) {
            int inside = chart.of(lot);
            tightenings += inside;
            if (inside >= ENOUGH && chart.all() - inside >= ENOUGH) {
                differences.add(chart.medianOf(lot) - chart.medianOfOthers(lot));
            }
        }
        int n = tightenings;
        return MeanOfDifferences.of(
                        differences.stream().mapToDouble(Double::doubleValue).toArray(), 0.95)
                .map(mean -> new Compared(lot, feature, n, List.copyOf(differences), mean));
    }
}
