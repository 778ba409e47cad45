package org.tautlog.accuracy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import org.tautlog.accuracy.CauseStudy.Placed;
import org.tautlog.judge.Judgement;
import org.tautlog.line.CausedShift;
import org.tautlog.line.CausedShift.Kind;
import org.tautlog.line.CausedShift.Shows;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.review.cause.Diagnoses;
import org.tautlog.review.cause.Diagnosis;
import org.tautlog.review.stream.PastShift;
import org.tautlog.review.stream.StreamReview;
import org.tautlog.trace.TraceIdentity;

/** Pairs of shifts by the same tools on other bolts of other lots: what is said of a spindle against the shift before. */
final class ShiftPairs {
    static final int ENGINES = 28;

    /** What was said in pairs in which nothing was placed. */
    record UntouchedPairs(int pairs, int differed, int named) {}

    private record Pair(PastShift before, Map<TraceIdentity, Judgement> now) {}

    static final List<Placed> PLACED = List.of(
            placed(Kind.TORQUE_SCALE, 0.01),
            placed(Kind.TORQUE_SCALE, 0.02),
            placed(Kind.TORQUE_SCALE, 0.03),
            placed(Kind.TORQUE_SCALE, 0.05),
            placed(Kind.TORQUE_SCALE, -0.05),
            placed(Kind.ANGLE_SCALE, 0.02),
            placed(Kind.ANGLE_SCALE, 0.04),
            placed(Kind.WIND_UP, 0.5),
            placed(Kind.SNUG_TORQUE, 0.3),
            placed(Kind.TURN, 3),
            placed(Kind.FRICTION, 0.06),
            placed(Kind.FRICTION, 0.12),
            placed(Kind.STIFFNESS, -0.06));

    private static final Map<Long, Pair> BASE = new ConcurrentHashMap<>();

    private ShiftPairs() {}

    static Placed placed(Kind kind, double size) {
        return new Placed(kind, size, Shows.SPINDLE_ALL_SHIFT);
    }

    static GradedCause grade(Placed placed, long firstSeed, int n) {
        var found = LongStream.range(firstSeed, firstSeed + n)
                .parallel()
                .mapToObj(seed -> since(placed, seed))
                .toList();
        return GradedCause.of(placed, firstSeed, found);
    }

    static UntouchedPairs untouched(long firstSeed, int n) {
        var found = LongStream.range(firstSeed, firstSeed + n)
                .parallel()
                .mapToObj(seed -> since(placed(Kind.NOTHING, 0), seed))
                .toList();
        return new UntouchedPairs(
                n, (int) found.stream().filter(pair -> !pair.isEmpty()).count(), (int) found.stream()
                        .filter(pair ->
                                pair.stream().anyMatch(one -> one.named().isPresent()))
                        .count());
    }

    private static List<Diagnosis> since(Placed placed, long seed) {
        var pair = BASE.computeIfAbsent(seed, ShiftPairs::pair);
        var now = new LinkedHashMap<>(pair.now());
        if (placed.kind() != Kind.NOTHING) {
            now.putAll(CauseStudy.judged(CausedShift.next(placed.kind(), placed.size(), seed, ENGINES)));
        }
        return Diagnoses.since(pair.before(), past(now), FenwaterEngine.specification());
    }

    private static Pair pair(long seed) {
        return new Pair(
                past(CauseStudy.beginning(seed, ENGINES)),
                CauseStudy.judged(CausedShift.next(Kind.NOTHING, 0, seed, ENGINES)));
    }

    private static PastShift past(Map<TraceIdentity, Judgement> judged) {
        var window = FenwaterEngine.specification().window();
        return PastShift.of(StreamReview.of(List.copyOf(judged.values()), window), List.of());
    }
}
