package org.tautlog.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tautlog.accuracy.CauseStudy.Placed;
import org.tautlog.line.CausedShift;
import org.tautlog.line.CausedShift.Kind;
import org.tautlog.line.CausedShift.Shows;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.review.cause.Diagnoses;
import org.tautlog.review.stream.PastShift;

/** Causes of a clear size are named, and none wrongly: the cause study in small. */
class CausesToldApartTest {
    private static final int N = 4;
    private static final int LEAST_RIGHT = 3;
    private static final long SEED = 1;

    static Stream<Placed> placed() {
        return Stream.of(
                new Placed(Kind.TORQUE_SCALE, 0.06, Shows.ONE_SPINDLE),
                new Placed(Kind.TORQUE_SCALE, -0.06, Shows.ONE_SPINDLE),
                new Placed(Kind.ANGLE_SCALE, 0.04, Shows.ONE_SPINDLE),
                new Placed(Kind.WIND_UP, 0.5, Shows.ONE_SPINDLE),
                new Placed(Kind.FRICTION, 0.12, Shows.ONE_SPINDLE),
                new Placed(Kind.FRICTION, 0.12, Shows.ONE_LOT),
                new Placed(Kind.SNUG_TORQUE, -0.5, Shows.ONE_STATION),
                new Placed(Kind.FRICTION, 0.12, Shows.ONE_STATION),
                new Placed(Kind.STRENGTH, -0.08, Shows.ONE_LOT));
    }

    @ParameterizedTest
    @MethodSource("placed")
    void is_named_in_most_shifts_and_never_taken_for_another(Placed placed) {
        var graded = CauseStudy.grade(placed, 1, N);
        assertEquals(Map.of(), graded.wrong());
        assertTrue(graded.right() >= LEAST_RIGHT, graded.toString());
    }

    @Test
    void no_cause_is_named_for_a_spindle_where_nothing_was_placed() {
        assertEquals(0, CauseStudy.untouched(1, N).spindles());
    }

    /** A transducer out of scale and a coating changed between two shifts make no step within either. */
    @Test
    void a_spindle_off_since_the_shift_before_is_seen_and_no_cause_named() {
        var before = new Placed(Kind.NOTHING, 0, Shows.ONE_SPINDLE);
        assertEquals(List.of(), since(before, before));
        var spindle = since(before, new Placed(Kind.TORQUE_SCALE, 0.06, Shows.SPINDLE_ALL_SHIFT));
        assertEquals(List.of(CausedShift.touched(SEED) + " cannot tell"), spindle);
        var all = since(before, new Placed(Kind.FRICTION, 0.12, Shows.WHOLE_SHIFT));
        assertEquals(List.of(), all);
    }

    private static List<String> since(Placed before, Placed now) {
        return Diagnoses.since(past(before), past(now), FenwaterEngine.specification()).stream()
                .map(one -> one.what()
                        + ' '
                        + one.named().map(named -> named.cause().name()).orElse("cannot tell"))
                .toList();
    }

    private static PastShift past(Placed placed) {
        return PastShift.of(CauseStudy.reviewed(placed, SEED), List.of());
    }
}
