package org.tautlog.spc.capability;

import java.util.Arrays;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Sample;
import org.tautlog.spc.change.ChangeOptions;
import org.tautlog.spc.change.Changes;
import org.tautlog.spc.change.Trend;
import org.tautlog.spc.compare.GroupTest;
import org.tautlog.spc.compare.GroupTests;

/**
 * How a process behaves over time: which of its moments stay and which move, from subgroups in time order. It says which
 * capability figure means anything; it is a classification by tests, so the boundary cases go either way.
 *
 * <pre>
 * spread moves:    Brown-Forsythe over subgroups
 * location moves:  Welch where spread moves, else analysis of variance, over subgroups
 * how it moves:    trend of the subgroup means by ranks, or one step in them, whichever leaves less; else at random
 * resulting shape: Anderson-Darling over all values
 * </pre>
 *
 * Source: time-dependent distribution models of ISO 22514-2; the tests that tell them apart are ours.
 *
 * @param type the model
 * @param location the test of location
 * @param spread the test of spread
 * @param normality the test of normality of all values, or why there is none
 * @param significance p value below which a test counts
 */
public record TimeModel(
        Type type, GroupTest location, GroupTest spread, Answer<AndersonDarling> normality, double significance) {
    /** The models of ISO 22514-2. */
    public enum Type {
        /** Location and spread stay, normal. */
        A1,
        /** Location and spread stay, not normal. */
        A2,
        /** Location stays, spread moves. */
        B,
        /** Location moves at random, spread stays, all values together normal. */
        C1,
        /** Location moves at random, spread stays, all values together not normal. */
        C2,
        /** Location drifts, spread stays. */
        C3,
        /** Location steps, as from lot to lot, spread stays. */
        C4,
        /** Location and spread move. */
        D
    }

    /**
     * Classifies a process.
     *
     * @param subgroups subgroups in time order, at least 2, of at least 3 values each
     * @param significance p value below which a test counts, above 0 and below 1; usual 0.01
     * @return the model, or why there is none
     */
    public static Answer<TimeModel> of(double[][] subgroups, double significance) {
        if (!(significance > 0 && significance < 1))
            throw new IllegalArgumentException("significance is " + significance + "; it must lie between 0 and 1");
        for (int g = 0; g < subgroups.length; g++) {
            var group = Sample.of(subgroups[g], 3, "subgroup " + (g + 1));
            if (group.found().isEmpty())
                return Answer.missing(
                        group.missingFor().orElseThrow(), group.whyMissing().orElseThrow());
        }
        return GroupTests.brownForsythe(subgroups).flatMap(spread -> {
            boolean moves = spread.pValue() < significance;
            return (moves ? GroupTests.welch(subgroups) : GroupTests.anova(subgroups))
                    .map(location -> classify(subgroups, location, spread, significance));
        });
    }

    private static TimeModel classify(double[][] subgroups, GroupTest location, GroupTest spread, double significance) {
        var all = Arrays.stream(subgroups).flatMapToDouble(Arrays::stream).toArray();
        var normality = AndersonDarling.of(all);
        boolean normal = normality.found().map(t -> t.pValue() >= significance).orElse(true);
        boolean spreadMoves = spread.pValue() < significance;
        boolean locationMoves = location.pValue() < significance;
        Type type;
        if (locationMoves && spreadMoves) type = Type.D;
        else if (spreadMoves) type = Type.B;
        else if (!locationMoves) type = normal ? Type.A1 : Type.A2;
        else type = movement(subgroups, significance, normal);
        return new TimeModel(type, location, spread, normality, significance);
    }

    private static Type movement(double[][] subgroups, double significance, boolean normal) {
        var means = Arrays.stream(subgroups)
                .mapToDouble(g -> Arrays.stream(g).average().orElseThrow())
                .toArray();
        var trend = Trend.of(means, 0.95).found().filter(t -> t.pValue() < significance);
        var step = Changes.ofMean(means, new ChangeOptions(2, 0.95, significance))
                .found()
                .filter(change -> change.significant());
        double trendLeaves = trend.map(t -> lineLeaves(means)).orElse(Double.POSITIVE_INFINITY);
        double stepLeaves = step.map(s -> leaves(Arrays.copyOf(means, s.index()))
                        + leaves(Arrays.copyOfRange(means, s.index(), means.length)))
                .orElse(Double.POSITIVE_INFINITY);
        if (trend.isEmpty() && step.isEmpty()) return normal ? Type.C1 : Type.C2;
        return trendLeaves <= stepLeaves ? Type.C3 : Type.C4;
    }

    private static double leaves(double[] part) {
        return Sample.derived(part).sumOfSquares();
    }

    private static double lineLeaves(double[] means) {
        double middle = (means.length - 1) / 2.0;
        double level = Arrays.stream(means).average().orElseThrow();
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < means.length; i++) {
            sxx += (i - middle) * (i - middle);
            sxy += (i - middle) * (means[i] - level);
        }
        return Math.max(0, leaves(means) - sxy * sxy / sxx);
    }
}
