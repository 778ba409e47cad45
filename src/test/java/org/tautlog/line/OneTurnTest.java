package org.tautlog.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.FirstYield;
import org.tautlog.joint.Friction;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.joint.LayerShape;
import org.tautlog.joint.TorqueForm;
import org.tautlog.joint.TorquePreload;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.tightening.WindUp;

/** Common practice, no source: once all is seated, one turn stretches bolt and joint together by one thread pitch. */
class OneTurnTest {
    private static final Seating SEATED = Seating.none();

    @Test
    void one_turn_of_the_thread_draws_bolt_and_joint_together_by_one_pitch() {
        var joint = FenwaterEngine.joint();
        var curve = new LoadCurve(joint, SEATED);
        double loadN = curve.loadN(420) - curve.loadN(60);
        double turnedInTheThread = 1 - twistDeg(joint, loadN) / 360;
        double drawnMm = loadN * joint.resilienceMmPerN();
        assertEquals(turnedInTheThread * 1.5, drawnMm, 0.01 * 1.5);
        assertTrue(turnedInTheThread > 0.9 && turnedInTheThread < 1, "the shank takes up " + turnedInTheThread);
    }

    @Test
    void between_rigid_layers_the_bolt_alone_stretches_by_the_pitch() {
        var drawn = FenwaterEngine.joint();
        var rigid = new LayerMaterial("rigid", 1e12, 0);
        var joint = new BoltedJoint(
                strong(drawn.bolt()),
                List.of(new Layer("block", drawn.bolt().freeLengthMm(), rigid, new LayerShape.StatedArea(1e6))),
                Friction.both(0));
        double loadN = new LoadCurve(joint, SEATED).loadN(360);
        double boltStretchMm = loadN * joint.boltResilienceMmPerN();
        assertEquals(1.5 * (1 - twistDeg(joint, loadN) / 360), boltStretchMm, 1e-3);
    }

    @Test
    void the_elastic_zone_is_that_of_the_design_formula_and_the_knee_is_rounder() {
        var joint = FenwaterEngine.joint();
        var seating = new Seating(0.04, 2_000);
        var round = new LoadCurve(joint, seating);
        var sharp =
                TighteningCurve.of(new Tightening(joint, 20, 360, 1.6, seating, TorsionRule.FULLY_PLASTIC, Knee.SHARP));
        double yieldN =
                FirstYield.turningPreloadN(joint.bolt(), joint.friction().threadMu(), TorsionRule.FULLY_PLASTIC);
        double kneeDeg = sharp.headAngleDeg(yieldN);
        for (double share : List.of(0.1, 0.3, 0.5, 0.7)) {
            assertEquals(sharp.preloadN(share * kneeDeg), round.loadN(share * kneeDeg), 0.002 * yieldN);
        }
        assertTrue(round.loadN(kneeDeg) < 0.97 * yieldN, "at the sharp knee the round one has left the line");
    }

    @Test
    void at_the_yield_strength_the_shank_has_stretched_for_good_by_two_per_mille() {
        var joint = FenwaterEngine.joint().withFriction(Friction.both(0));
        double yieldN = FirstYield.turningPreloadN(joint.bolt(), 0, TorsionRule.FULLY_PLASTIC);
        var curve = new LoadCurve(joint, SEATED);
        double shankMm = joint.bolt().segments().get(0).lengthMm();
        double plasticDeg = curve.angleDeg(yieldN) - yieldN * curve.elasticDegPerN();
        assertEquals(0.002 * shankMm / 1.5 * 360, plasticDeg, 0.06 * plasticDeg);
    }

    private static Bolt strong(Bolt bolt) {
        return bolt.withMaterial(bolt.material().withYieldStrengthMPa(3_000));
    }

    private static double twistDeg(BoltedJoint joint, double loadN) {
        return WindUp.shankDegPerNm(joint.bolt())
                * TorquePreload.threadTorqueNm(joint.bolt(), joint.friction(), loadN, TorqueForm.ADDED_TERMS);
    }
}
