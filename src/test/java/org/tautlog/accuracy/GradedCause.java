package org.tautlog.accuracy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tautlog.accuracy.CauseStudy.Placed;
import org.tautlog.line.CausedShift;
import org.tautlog.review.cause.Cause;
import org.tautlog.review.cause.Diagnosis;
import org.tautlog.review.cause.Pattern;
import org.tautlog.review.cause.RankedCause;

/**
 * One placed cause over many shifts. Wrong is all that is named but what the cause was placed on, by that cause: another cause
 * there, and any for a spindle, station, lot or tightening beside it.
 *
 * @param placed what was placed
 * @param n in how many shifts
 * @param right in how many of them it was named, with its sign
 * @param untold in how many it was seen and no cause was named for it
 * @param unseen in how many it was not seen
 * @param wrong what was named wrongly, and how often
 * @param wrongSeeds seeds of the shifts in which anything was
 */
record GradedCause(
        Placed placed, int n, int right, int untold, int unseen, Map<String, Integer> wrong, Set<Long> wrongSeeds) {
    private static final double LEAST_OF_NAMED = 0.5;

    /**
     * Grades what was found in shifts of seeds that follow one another.
     *
     * @param found what was found in each
     */
    static GradedCause of(Placed placed, long firstSeed, List<List<Diagnosis>> found) {
        int[] counts = new int[3];
        var wrong = new TreeMap<String, Integer>();
        var wrongSeeds = new TreeSet<Long>();
        for (int i = 0; i < found.size(); i++) {
            long seed = firstSeed + i;
            var own = found.get(i).stream()
                    .filter(one -> CauseStudy.about(placed.shows(), one, seed))
                    .findFirst();
            if (own.isEmpty()) {
                counts[2]++;
            } else if (own.get().named().isEmpty()) {
                counts[1]++;
            }
            for (var one : found.get(i)) {
                boolean there = own.filter(one::equals).isPresent();
                var named = one.named();
                if (there && named.filter(cause -> isPlaced(placed, cause)).isPresent()) {
                    counts[0]++;
                } else if (named.isPresent() && !byDesign(one, named.get(), seed)) {
                    wrong.merge(
                            (there ? "" : word(one.pattern()))
                                    + named.get().cause().title(),
                            1,
                            Integer::sum);
                    wrongSeeds.add(seed);
                }
            }
        }
        return new GradedCause(placed, found.size(), counts[0], counts[1], counts[2], wrong, wrongSeeds);
    }

    int wrongs() {
        return wrongSeeds.size();
    }

    private static boolean isPlaced(Placed placed, RankedCause named) {
        return CauseStudy.cause(placed.kind()).filter(named.cause()::equals).isPresent()
                && named.size() * placed.size() > 0;
    }

    /** Lots of the line differ in strength and friction: such a lot is named rightly, unless for more than twice as much. */
    static boolean byDesign(Diagnosis one, RankedCause named, long seed) {
        if (one.pattern() != Pattern.ONE_LOT) {
            return false;
        }
        var mark = one.what().substring("lot ".length());
        double there = named.cause() == Cause.BOLT_STRENGTH
                ? CausedShift.strengthApart(mark, seed)
                : named.cause() == Cause.FRICTION ? CausedShift.frictionApart(mark, seed) : 0;
        return there / named.size() >= LEAST_OF_NAMED;
    }

    private static String word(Pattern pattern) {
        return switch (pattern) {
            case ONE_SPINDLE, ONLY_SPINDLE -> "spindle beside: ";
            case ALL_SPINDLES -> "station: ";
            case ONE_LOT -> "lot: ";
            case ONE_TIGHTENING -> "tightening: ";
        };
    }
}
