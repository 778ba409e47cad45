package org.tautlog.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.accuracy.CauseStudy.Placed;
import org.tautlog.line.CausedShift.Kind;
import org.tautlog.line.CausedShift.Shows;
import org.tautlog.review.cause.Pattern;

/** Causes of a clear size are named, and none wrongly: the cause study in small. */
class CausesToldApartTest {
    private static final int N = 4;
    private static final int LEAST_RIGHT = 3;

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

    /** A lot that was turned mostly before or mostly after the step is not told apart from the rest by it. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.5, 0.5})
    void a_station_whose_snug_stage_moved_makes_no_bolt_lot_differ(double size) {
        for (long seed = 103; seed <= 105; seed++) {
            var found = CauseStudy.diagnosed(new Placed(Kind.SNUG_TORQUE, size, Shows.ONE_STATION), seed);
            assertTrue(found.stream().anyMatch(one -> one.pattern() == Pattern.ALL_SPINDLES), found.toString());
            for (var lot : found) {
                if (lot.pattern() == Pattern.ONE_LOT) {
                    assertEquals(Optional.empty(), lot.named());
                    assertTrue(lot.chance() > lot.other(), lot.toString());
                }
            }
        }
    }

    @Test
    void no_cause_is_named_for_a_spindle_where_nothing_was_placed() {
        assertEquals(0, CauseStudy.untouched(1, N).spindles());
    }

    static Stream<Placed> sincePlaced() {
        return Stream.of(
                ShiftPairs.placed(Kind.TORQUE_SCALE, 0.08),
                ShiftPairs.placed(Kind.ANGLE_SCALE, 0.04),
                ShiftPairs.placed(Kind.FRICTION, 0.12));
    }

    /** What changed between two shifts makes no step within either, and the second shift's bolts are of other lots. */
    @ParameterizedTest
    @MethodSource("sincePlaced")
    void is_named_against_the_shift_before_for_its_own_spindle_alone(Placed placed) {
        var pairs = ShiftPairs.grade(placed, 1, N);
        assertEquals(Map.of(), pairs.wrong());
        assertTrue(pairs.right() >= LEAST_RIGHT, pairs.toString());
    }

    @Test
    void other_lots_by_the_same_tools_are_no_change_of_a_spindle() {
        assertEquals(new ShiftPairs.UntouchedPairs(N, 0, 0), ShiftPairs.untouched(1, N));
    }
}
