package org.tautlog.signature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Friction;
import org.tautlog.joint.Joints;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.tightening.WindUp;
import org.tautlog.joint.window.StatedJoint;

/** The estimate runs the tightening model backwards; forwards it is another room's code. */
class ClampLoadLaws {
    private static final double DRIVE_NM_PER_DEG = 25;

    @Property(tries = 200)
    void an_elastic_tightening_gives_back_its_load_and_its_friction(
            @ForAll @DoubleRange(min = 100, max = 200) double turnDeg,
            @ForAll @DoubleRange(min = 0.05, max = 0.2) double mu) {
        var end = End.of(Joints.longThroughBolt(Friction.both(mu)), turnDeg);
        var load = estimate(end, EndState.ELASTIC);
        assertEquals(ClampLoad.Basis.ANGLE, load.basis());
        assertEquals(end.preloadN / 1000, load.loadKN().number(), 2e-3 * end.preloadN / 1000);
        assertEquals(mu, load.apparentFriction().number(), 5e-4);
    }

    /** The stated friction only splits the torque between thread and head; its level does not count. */
    @Property(tries = 50)
    void the_stated_friction_does_not_change_the_load(@ForAll @DoubleRange(min = 0.05, max = 0.2) double statedMu) {
        var end = End.of(Joints.longThroughBolt(Friction.both(0.11)), 200);
        var stated = stated(Joints.longThroughBolt(Friction.both(statedMu)));
        var signature = ReadSignatures.of(end.rate(), end.pastOriginDeg, end.torqueNm, EndState.ELASTIC);
        assertEquals(
                estimate(end, EndState.ELASTIC).loadKN().number(),
                ClampLoadEstimate.of(signature, stated).loadKN().number(),
                1e-9);
    }

    @Property(tries = 100)
    void on_the_elastic_line_angle_and_carried_back_torque_say_the_same(
            @ForAll @DoubleRange(min = 100, max = 250) double turnDeg) {
        var end = End.of(Joints.longThroughBolt(), turnDeg);
        assertEquals(
                estimate(end, EndState.ELASTIC).loadKN().number(),
                estimate(end, EndState.ONSET_ZONE).loadKN().number(),
                1e-9);
    }

    @Property(tries = 100)
    void a_torque_gauge_out_of_scale_moves_the_friction_and_hardly_the_load(
            @ForAll @DoubleRange(min = 0.9, max = 1.1) double scale) {
        var end = End.of(Joints.longThroughBolt(Friction.both(0.11)), 220);
        var shown = ClampLoadEstimate.of(
                ReadSignatures.of(end.rate() * scale, end.pastOriginDeg, end.torqueNm * scale, EndState.ELASTIC),
                stated(Joints.longThroughBolt()));
        assertEquals(
                end.preloadN / 1000, shown.loadKN().number(), 0.08 * Math.abs(scale - 1) * end.preloadN / 1000 + 0.1);
        assertEquals(scale > 1, shown.apparentFriction().number() > 0.11);
    }

    @Property(tries = 100)
    void past_the_knee_turning_further_at_the_same_torque_adds_no_load(
            @ForAll @DoubleRange(min = 0, max = 200) double furtherDeg) {
        var end = End.of(Joints.longThroughBolt(), 250);
        var signature = ReadSignatures.of(end.rate(), end.pastOriginDeg + furtherDeg, end.torqueNm, EndState.PLASTIC);
        assertEquals(
                estimate(end, EndState.PLASTIC).loadKN().number(),
                ClampLoadEstimate.of(signature, stated(Joints.longThroughBolt()))
                        .loadKN()
                        .number(),
                1e-9);
    }

    @Property(tries = 100)
    void further_on_the_elastic_line_is_a_higher_load(
            @ForAll @DoubleRange(min = 100, max = 240) double turnDeg,
            @ForAll @DoubleRange(min = 1, max = 20) double furtherDeg) {
        double less = load(turnDeg);
        double more = load(turnDeg + furtherDeg);
        assertTrue(less < more, less + " then " + more);
    }

    private static double load(double turnDeg) {
        return estimate(End.of(Joints.longThroughBolt(), turnDeg), EndState.ELASTIC)
                .loadKN()
                .number();
    }

    private static ClampLoad estimate(End end, EndState state) {
        return ClampLoadEstimate.of(
                ReadSignatures.of(end.rate(), end.pastOriginDeg, end.torqueNm, state),
                stated(Joints.longThroughBolt()));
    }

    private static StatedJoint stated(BoltedJoint joint) {
        return new StatedJoint(joint, 0, DRIVE_NM_PER_DEG, null, Map.of());
    }

    /** Where a modelled tightening ends, seen through a drive that winds up. */
    private record End(double preloadN, double torqueNm, double pastOriginDeg) {
        static End of(BoltedJoint joint, double turnDeg) {
            var curve = TighteningCurve.of(Tightening.of(joint, 15, turnDeg));
            var end = curve.atEnd();
            double head = curve.finalAngleDeg() - curve.elasticOriginDeg();
            return new End(end.preloadN(), end.torqueNm(), head + WindUp.driveDeg(end.torqueNm(), DRIVE_NM_PER_DEG));
        }

        double rate() {
            return torqueNm / pastOriginDeg;
        }
    }
}
