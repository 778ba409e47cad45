package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.compare.Adjustment;
import org.tautlog.spc.compare.GroupTest;
import org.tautlog.spc.compare.GroupTests;
import org.tautlog.spc.compare.MedianShift;

/**
 * What changed since an earlier shift, stream by stream and feature by feature; the number of comparisons is allowed for by
 * Holm's method, so that one shift in 100 names anything where nothing changed.
 *
 * @param features levels and spreads compared, surest change first
 * @param shares conforming first attempts then and now, in the streams' order
 * @param tests how many tests were made; the level of proof is shared among them
 * @param notCompared streams and features of this shift that the earlier one lacks, or with too few values on either side
 */
public record ShiftComparison(List<FeatureChange> features, List<ShareChange> shares, int tests, int notCompared) {
    /** Adjusted p value at or below which something is said to have changed. */
    public static final double LEVEL = 0.01;

    /**
     * One feature of one stream, then and now.
     *
     * @param stream the station and spindle
     * @param feature which feature
     * @param level medians and their shift with its bounds
     * @param levelAdjusted p value of the shift with all tests allowed for
     * @param spreadAdjusted p value of a difference in spread with all tests allowed for; null where it cannot be told
     */
    public record FeatureChange(
            Stream stream,
            ChartedFeature feature,
            MedianShift level,
            double levelAdjusted,
            @Nullable Double spreadAdjusted) {
        /** {@return whether the level changed} */
        public boolean levelHolds() {
            return levelAdjusted <= LEVEL;
        }

        /** {@return whether the spread changed} */
        public boolean spreadHolds() {
            return spreadAdjusted != null && spreadAdjusted <= LEVEL;
        }
    }

    /**
     * Conforming first attempts of one stream, then and now.
     *
     * @param before then
     * @param now now
     */
    public record ShareChange(PastShift.Share before, PastShift.Share now) {}

    private record Compared(PastShift.Level now, MedianShift level, Optional<GroupTest> spread) {}

    public ShiftComparison {
        features = List.copyOf(features);
        shares = List.copyOf(shares);
    }

    /**
     * Compares two shifts.
     *
     * @param before the earlier
     * @param now the later
     * @return what changed
     */
    public static ShiftComparison of(PastShift before, PastShift now) {
        var compared = new ArrayList<Compared>();
        int left = 0;
        for (var level : now.levels()) {
            var one = before.levels().stream()
                    .filter(past -> past.stream().equals(level.stream()) && past.feature() == level.feature())
                    .findFirst()
                    .flatMap(past -> compare(past, level));
            one.ifPresent(compared::add);
            left += one.isPresent() || level.values().isEmpty() ? 0 : 1;
        }
        var tests = new ArrayList<Double>();
        compared.forEach(one -> tests.add(one.level().pValue()));
        compared.forEach(one -> one.spread().ifPresent(test -> tests.add(test.pValue())));
        var adjusted = Adjustment.HOLM.adjust(
                tests.stream().mapToDouble(Double::doubleValue).toArray());
        var features = new ArrayList<FeatureChange>();
        int spread = compared.size();
        for (int i = 0; i < compared.size(); i++) {
            var one = compared.get(i);
            features.add(new FeatureChange(
                    one.now().stream(),
                    one.now().feature(),
                    one.level(),
                    adjusted[i],
                    one.spread().isPresent() ? (Double) adjusted[spread++] : null));
        }
        features.sort(Comparator.comparingDouble(FeatureChange::levelAdjusted));
        return new ShiftComparison(features, shares(before, now), adjusted.length, left);
    }

    /** {@return levels or spreads that changed, surest first} */
    public List<FeatureChange> holding() {
        return features.stream()
                .filter(change -> change.levelHolds() || change.spreadHolds())
                .toList();
    }

    private static Optional<Compared> compare(PastShift.Level past, PastShift.Level now) {
        var before = numbers(past);
        var after = numbers(now);
        return MedianShift.of(before, after, 0.95)
                .found()
                .map(level -> new Compared(
                        now,
                        level,
                        GroupTests.brownForsythe(new double[][] {before, after}).found()));
    }

    private static double[] numbers(PastShift.Level level) {
        return level.values().stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<ShareChange> shares(PastShift before, PastShift now) {
        return now.shares().stream()
                .flatMap(share -> before.shares().stream()
                        .filter(past -> past.stream().equals(share.stream()))
                        .map(past -> new ShareChange(past, share)))
                .toList();
    }
}
