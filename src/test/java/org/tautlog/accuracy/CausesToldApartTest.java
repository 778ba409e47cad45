package org.tautlog.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tautlog.accuracy.CauseStudy.Placed;
import org.tautlog.line.CausedShift.Kind;

/** Causes of a clear size are named, and none wrongly: the cause study in small. */
class CausesToldApartTest {
    private static final int N = 4;
    private static final int LEAST_RIGHT = 3;

    static Stream<Placed> placed() {
        return Stream.of(
                new Placed(Kind.TORQUE_SCALE, 0.06, false),
                new Placed(Kind.TORQUE_SCALE, -0.06, false),
                new Placed(Kind.FRICTION, 0.12, false),
                new Placed(Kind.STRENGTH, -0.08, true));
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
}
