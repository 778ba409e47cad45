package org.tautlog.review.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every pair of causes has a check on the floor that answers differently for the two. */
class SeparationTest {
    @Test
    void every_two_causes_are_told_apart_by_one_check_and_no_check_is_idle() {
        var used = new HashSet<FloorCheck>();
        int pairs = 0;
        for (var one : Cause.values()) {
            for (var other : Cause.values()) {
                if (one != other) {
                    var separation = Separation.of(one, other, Pattern.ONE_SPINDLE);
                    assertNotEquals(
                            separation.check().seen(one), separation.check().seen(other));
                    assertEquals(
                            separation.check(),
                            Separation.of(other, one, Pattern.ONE_SPINDLE).check());
                    assertTrue(separation.sentence().contains(one.title()), separation.sentence());
                    used.add(separation.check());
                    pairs++;
                }
            }
        }
        assertEquals(56, pairs);
        assertEquals(FloorCheck.values().length, used.size());
    }

    /** Where all spindles of a station differ alike, the one beside it tells nothing. */
    @Test
    void what_all_spindles_show_is_not_compared_with_the_spindle_beside() {
        for (var pattern : List.of(Pattern.ALL_SPINDLES, Pattern.ONLY_SPINDLE, Pattern.ONE_LOT)) {
            for (var check : FloorCheck.values()) {
                assertFalse(check.act(pattern).matches(".*(beside|this spindle).*"), check.act(pattern));
            }
            for (var cause : Cause.values()) {
                assertFalse(cause.check(pattern).matches(".*(beside|this spindle).*"), cause.check(pattern));
            }
        }
        assertTrue(FloorCheck.MASTER_JOINT.act(Pattern.ONE_SPINDLE).contains("the one beside it"));
    }

    @Test
    void a_transducer_is_told_from_friction_by_a_reference_in_line() {
        assertEquals(
                "Put a reference torque transducer in line with this spindle (ISO 5393) and tighten three bolts: where the"
                        + " two torques differ, it is torque transducer scale; where they agree, it is friction or lubricant.",
                Separation.of(Cause.TORQUE_SCALE, Cause.FRICTION, Pattern.ONE_SPINDLE)
                        .sentence());
    }

    @Test
    void a_worn_drive_is_told_from_a_soft_joint_by_its_twist_alone() {
        assertEquals(
                FloorCheck.HELD_SOCKET,
                Separation.of(Cause.JOINT_STIFFNESS, Cause.WIND_UP, Pattern.ONE_SPINDLE)
                        .check());
    }
}
