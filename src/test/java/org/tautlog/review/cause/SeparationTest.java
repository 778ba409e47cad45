package org.tautlog.review.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
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
                    var separation = Separation.of(one, other);
                    assertNotEquals(
                            separation.check().seen(one), separation.check().seen(other));
                    assertEquals(separation.check(), Separation.of(other, one).check());
                    assertTrue(separation.sentence().contains(one.title()), separation.sentence());
                    used.add(separation.check());
                    pairs++;
                }
            }
        }
        assertEquals(56, pairs);
        assertEquals(FloorCheck.values().length, used.size());
    }

    @Test
    void a_transducer_is_told_from_friction_by_a_reference_in_line() {
        assertEquals(
                "Put a reference torque transducer in line with this spindle (ISO 5393) and tighten three bolts: where the"
                        + " two torques differ it is torque transducer scale, where they agree it is friction or lubricant.",
                Separation.of(Cause.TORQUE_SCALE, Cause.FRICTION).sentence());
    }

    @Test
    void a_worn_drive_is_told_from_a_soft_joint_by_its_twist_alone() {
        assertEquals(
                FloorCheck.HELD_SOCKET,
                Separation.of(Cause.JOINT_STIFFNESS, Cause.WIND_UP).check());
    }
}
