package org.tautlog.joint.tightening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.BoltSegment;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Engagement;
import org.tautlog.joint.Friction;
import org.tautlog.joint.HeadForm;
import org.tautlog.joint.Joints;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.joint.LayerShape;
import org.tautlog.joint.MetricThread;
import org.tautlog.joint.PropertyClass;
import org.tautlog.joint.TorsionRule;

/** What holds for every tightening. */
class TighteningLaws {
    /** Common practice, no source: in a rigid joint one turn stretches the bolt by one pitch, the shank's twist aside. */
    @Property
    void one_turn_in_a_rigid_joint_stretches_the_bolt_by_one_pitch(
            @ForAll @DoubleRange(min = 150, max = 500) double gripMm,
            @ForAll @DoubleRange(min = 0.02, max = 0.2) double mu) {
        var thread = MetricThread.of("M10");
        var strong = PropertyClass.CLASS_12_9.material(thread).withYieldStrengthMPa(1e5);
        var bolt = new Bolt(
                thread,
                List.of(BoltSegment.shank(gripMm, 8.2)),
                strong,
                HeadForm.HEXAGON,
                16,
                11,
                new Engagement(Engagement.Mate.NUT, 205_000));
        var rigid = new LayerMaterial("rigid", 1e15, 0);
        var joint = new BoltedJoint(
                bolt, List.of(new Layer("plate", gripMm, rigid, new LayerShape.StatedArea(1e6))), Friction.both(mu));
        var curve = TighteningCurve.of(Tightening.of(joint, 5, 360));
        var gainedN = curve.atEnd().preloadN() - curve.snugPreloadN();
        var stretchMm = gainedN * joint.boltResilienceMmPerN();
        var twistMm = curve.shankTwistDeg(gainedN) / 360 * thread.pitchMm();
        assertEquals(thread.pitchMm(), stretchMm + twistMm, 1e-6);
    }

    @Property
    void preload_and_torque_rise_with_the_angle(
            @ForAll @DoubleRange(min = 0, max = 700) double angleDeg,
            @ForAll @DoubleRange(min = 0.01, max = 50) double moreDeg,
            @ForAll @DoubleRange(min = 0, max = 0.3) double closureMm,
            @ForAll TorsionRule rule,
            @ForAll Knee knee) {
        var curve = curve(0.1, closureMm, rule, knee);
        assertTrue(curve.preloadN(angleDeg + moreDeg) > curve.preloadN(angleDeg));
        assertTrue(curve.torqueNm(angleDeg + moreDeg) > curve.torqueNm(angleDeg));
        assertTrue(curve.plasticStretchMm(angleDeg + moreDeg) >= curve.plasticStretchMm(angleDeg));
    }

    @Property
    void the_angle_at_the_preload_at_an_angle_is_that_angle(
            @ForAll @DoubleRange(min = 0.01, max = 700) double angleDeg,
            @ForAll @DoubleRange(min = 0, max = 0.3) double closureMm,
            @ForAll @DoubleRange(min = 0.04, max = 0.25) double mu,
            @ForAll Knee knee) {
        var curve = curve(mu, closureMm, TorsionRule.FULLY_PLASTIC, knee);
        assertEquals(angleDeg, curve.headAngleDeg(curve.preloadN(angleDeg)), 1e-8);
    }

    @Property
    void bolt_and_joint_together_are_drawn_by_the_pitch_share_of_the_angle(
            @ForAll @DoubleRange(min = 1, max = 700) double angleDeg,
            @ForAll @DoubleRange(min = 0, max = 0.3) double closureMm,
            @ForAll Knee knee) {
        var joint = Joints.longThroughBolt(Friction.both(0.1));
        var seating = new Seating(closureMm, 2_000);
        var curve = TighteningCurve.of(new Tightening(joint, 15, 360, 0, seating, TorsionRule.FULLY_PLASTIC, knee));
        var preloadN = curve.preloadN(angleDeg);
        var drawnMm =
                preloadN * joint.resilienceMmPerN() + seating.closedMm(preloadN) + curve.plasticStretchMm(angleDeg);
        var plasticTwistDeg =
                Math.toDegrees(9 / 8.2 * curve.shankTorqueNm(1) * 1000 * 3 / 8.2) * curve.plasticStretchMm(angleDeg);
        var turnedDeg = angleDeg - curve.shankTwistDeg(preloadN) - plasticTwistDeg;
        assertEquals(turnedDeg / 360 * 1.5, drawnMm, 1e-5);
    }

    @Property
    void more_friction_reaches_yield_at_less_preload_and_more_torque(
            @ForAll @DoubleRange(min = 0.04, max = 0.2) double mu,
            @ForAll @DoubleRange(min = 0.01, max = 0.1) double more) {
        var slick = curve(mu, 0, TorsionRule.FULLY_PLASTIC, Knee.ROUND);
        var dry = curve(mu + more, 0, TorsionRule.FULLY_PLASTIC, Knee.ROUND);
        assertTrue(dry.firstYieldPreloadN() < slick.firstYieldPreloadN());
        assertTrue(dry.firstYieldTorqueNm() > slick.firstYieldTorqueNm());
    }

    @Property
    void drawing_together_is_undone_by_stretch(
            @ForAll @DoubleRange(min = 0, max = 3) double drawnMm,
            @ForAll @DoubleRange(min = 1, max = 100) double giveMicrometresPerKN,
            @ForAll Knee knee) {
        var give = giveMicrometresPerKN * 1e-6;
        var bolt = Joints.shortThroughBolt(40).bolt();
        var plastic = PlasticStretch.turning(bolt, 0.1, TorsionRule.FULLY_PLASTIC, knee);
        var preloadN = plastic.preloadN(give, drawnMm);
        assertEquals(drawnMm, preloadN * give + plastic.stretchMm(preloadN), 1e-9);
    }

    /** A bolt that is let go and pulled again gives no further stretch until it is where it was. */
    @Property
    void a_bolt_pulled_again_stretches_no_further_before_it_is_where_it_was(
            @ForAll @DoubleRange(min = 0, max = 600) double angleDeg,
            @ForAll @DoubleRange(min = 0, max = 1) double torsionLeftShare,
            @ForAll @DoubleRange(min = 0, max = 1) double back,
            @ForAll Knee knee) {
        var curve = curve(0.1, 0, TorsionRule.FULLY_PLASTIC, knee);
        var reachedN = curve.preloadN(angleDeg);
        var standing = PlasticStretch.standing(
                Joints.longThroughBolt(Friction.both(0.1)).bolt(),
                0.1,
                TorsionRule.FULLY_PLASTIC,
                knee,
                reachedN,
                torsionLeftShare * curve.shankTorqueNm(reachedN),
                1);
        assertEquals(0, standing.stretchMm(back * reachedN), 1e-9);
    }

    private static TighteningCurve curve(double mu, double closureMm, TorsionRule rule, Knee knee) {
        return TighteningCurve.of(new Tightening(
                Joints.longThroughBolt(Friction.both(mu)), 10, 360, 0, new Seating(closureMm, 2_000), rule, knee));
    }
}
