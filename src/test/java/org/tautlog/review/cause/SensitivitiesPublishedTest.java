package org.tautlog.review.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.review.stream.Cue;

/**
 * What the model foretells against closed relations of the trade: VDI 2230-1:2015, equation of step R13 (torque to preload),
 * and springs in a row.
 */
class SensitivitiesPublishedTest {
    private static final double RUNDOWN_DEG = 1200;
    private static final Sensitivities FENWATER =
            Sensitivities.of(FenwaterEngine.specification(), RUNDOWN_DEG).orElseThrow();
    private static final Shown USUAL = Shown.usual(
            FenwaterEngine.specification(),
            FenwaterEngine.specification().statedJoint().orElseThrow(),
            RUNDOWN_DEG);

    /** M_A = F (0.16 P + 0.58 d2 mu_G + D_Km/2 mu_K); the drive takes its part of the angle, the shank's twist up to 4 %. */
    @Test
    void friction_moves_the_torque_rate_by_its_share_of_the_torque() {
        BoltedJoint joint = FenwaterEngine.joint();
        var thread = joint.bolt().thread();
        double friction = 0.58 * thread.pitchDiameterMm() * 0.11 + joint.bolt().meanBearingDiameterMm() / 2 * 0.11;
        double share = friction / (friction + 0.16 * thread.pitchMm());
        double rate = USUAL.cue(Cue.TORQUE_RATE);
        double throughDrive = 1 - rate / 25;
        assertEquals(share * throughDrive, FENWATER.of(Cause.FRICTION, Cue.TORQUE_RATE) / rate, 0.04 * share);
    }

    @ParameterizedTest
    @EnumSource(
            value = Cue.class,
            names = {"PREVAILING_TORQUE", "TORQUE_RATE", "ONSET_TORQUE"})
    void a_transducer_scales_every_torque_that_the_bolt_sets(Cue cue) {
        assertEquals(USUAL.cue(cue), FENWATER.of(Cause.TORQUE_SCALE, cue), 1e-3 * USUAL.cue(cue));
    }

    @Test
    void a_transducer_leaves_the_onset_angle_and_friction_lowers_it() {
        assertEquals(0, FENWATER.of(Cause.TORQUE_SCALE, Cue.ONSET_ANGLE), 1e-6);
        assertTrue(FENWATER.of(Cause.FRICTION, Cue.ONSET_ANGLE) < 0, "torsion takes its part of the strength");
    }

    @Test
    void strength_moves_onset_torque_and_angle_together_and_leaves_the_rate() {
        assertEquals(0, FENWATER.of(Cause.BOLT_STRENGTH, Cue.TORQUE_RATE), 1e-9);
        assertTrue(FENWATER.of(Cause.BOLT_STRENGTH, Cue.ONSET_TORQUE) > 0);
        assertTrue(FENWATER.of(Cause.BOLT_STRENGTH, Cue.ONSET_ANGLE) > 0);
    }

    @Test
    void stiffness_moves_rate_and_onset_angle_against_each_other_and_leaves_the_onset_torque() {
        assertTrue(FENWATER.of(Cause.JOINT_STIFFNESS, Cue.TORQUE_RATE) > 0);
        assertTrue(FENWATER.of(Cause.JOINT_STIFFNESS, Cue.ONSET_ANGLE) < 0);
        assertEquals(0, FENWATER.of(Cause.JOINT_STIFFNESS, Cue.ONSET_TORQUE), 0.05 * USUAL.cue(Cue.ONSET_TORQUE));
    }

    @Test
    void an_encoder_scales_every_angle_that_the_bolt_sets() {
        assertEquals(RUNDOWN_DEG, FENWATER.of(Cause.ANGLE_SCALE, Cue.RUNDOWN), 1);
        assertEquals(
                USUAL.cue(Cue.ONSET_ANGLE),
                FENWATER.of(Cause.ANGLE_SCALE, Cue.ONSET_ANGLE),
                1e-3 * USUAL.cue(Cue.ONSET_ANGLE));
        assertEquals(-USUAL.cue(Cue.TORQUE_RATE), FENWATER.of(Cause.ANGLE_SCALE, Cue.TORQUE_RATE), 1e-3);
    }

    /** Springs in a row: the drive's compliance adds to that of the joint. */
    @Test
    void wind_up_takes_the_square_of_the_rate() {
        double rate = USUAL.cue(Cue.TORQUE_RATE);
        assertEquals(-rate * rate / 25, FENWATER.of(Cause.WIND_UP, Cue.TORQUE_RATE), 1e-5);
    }
}
