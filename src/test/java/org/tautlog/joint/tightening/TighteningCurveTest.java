package org.tautlog.joint.tightening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.joint.BoltMaterial;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Friction;
import org.tautlog.joint.Joints;
import org.tautlog.joint.TorsionRule;

/** A slender M10 through-bolt of 380 mm in aluminium: numbers computed from the formulas, no outside source. */
class TighteningCurveTest {
    private static final BoltedJoint JOINT = Joints.longThroughBolt();

    @Test
    void one_turn_adds_some_36_kilonewtons() {
        assertEquals(3.61e-5, JOINT.boltResilienceMmPerN(), 0.02e-5);
        assertEquals(0.59e-5, JOINT.clampedResilienceMmPerN(), 0.005e-5);
        assertEquals(99.4, JOINT.preloadPerDegN(), 0.5);
        assertEquals(35_800, 360 * JOINT.preloadPerDegN(), 200);
    }

    @ParameterizedTest(name = "mu {0}: {1} N·m at 40 kN")
    @CsvSource({"0.08,49", "0.10,59", "0.12,68", "0.14,78"})
    void torque_at_forty_kilonewtons(double mu, double torqueNm) {
        var curve = curve(Joints.longThroughBolt(Friction.both(mu)), 15, 200);
        assertEquals(torqueNm, curve.torqueNmAtPreload(40_000), 0.02 * torqueNm);
    }

    @ParameterizedTest(name = "mu {0}: the shank twists by {1} deg")
    @CsvSource({"0.08,16.4", "0.12,21.6"})
    void the_shank_twists_at_forty_kilonewtons(double mu, double twistDeg) {
        var curve = curve(Joints.longThroughBolt(Friction.both(mu)), 15, 200);
        assertEquals(twistDeg, curve.shankTwistDeg(40_000), 0.3);
    }

    /** Common practice, no source: snug and one full turn end just short of yield on a long bolt; 10.9 with 1000 MPa as lots have it. */
    @Test
    void snug_and_one_turn_end_just_short_of_yield() {
        var joint = withYield(1000);
        var end = curve(joint, 15, 360).atEnd();
        assertFalse(end.yielded());
        assertTrue(end.yieldShare() > 0.85, "share of yield: " + end.yieldShare());
        assertEquals(0, end.plasticStretchMm());
    }

    @Test
    void a_little_more_turn_goes_into_yield() {
        var curve = curve(JOINT, 15, 460);
        var end = curve.atEnd();
        assertTrue(end.yielded());
        assertTrue(end.plasticStretchMm() > 0);
        assertEquals(end.plasticStretchMm() / 380, end.plasticStrain(), 1e-12);
        assertTrue(end.preloadN() > curve.firstYieldPreloadN());
    }

    /** Past yield each degree adds far less preload: both springs in a row with the hardening section's. */
    @Test
    void the_preload_rate_falls_at_the_knee() {
        var curve = curve(JOINT, 15, 360);
        var kneeDeg = curve.firstYieldAngleDeg();
        var before = curve.preloadN(kneeDeg - 1) - curve.preloadN(kneeDeg - 2);
        var after = curve.preloadN(kneeDeg + 2) - curve.preloadN(kneeDeg + 1);
        var material = JOINT.bolt().material();
        var hardeningNPerMm = material.plasticModulusMPa() * Math.PI / 4 * 8.2 * 8.2 / 380;
        var degPerN = 240 * (JOINT.resilienceMmPerN() + 1 / hardeningNPerMm) + curve.shankTwistDeg(1);
        assertEquals(curve.preloadRateNPerDeg(), before, 1e-6);
        assertEquals(1 / degPerN, after, 1e-6);
    }

    @Test
    void a_perfectly_plastic_bolt_holds_its_preload() {
        var material = JOINT.bolt().material();
        var flat = new BoltMaterial(
                material.youngsModulusMPa(), 940, 1040, material.expansionPerK(), material.uniformElongation(), 0);
        var joint = new BoltedJoint(JOINT.bolt().withMaterial(flat), JOINT.layers(), JOINT.friction());
        var curve = curve(joint, 15, 460);
        assertEquals(curve.firstYieldPreloadN(), curve.atEnd().preloadN(), 1e-9);
        var pastDeg = curve.finalAngleDeg() - curve.firstYieldAngleDeg();
        assertEquals(pastDeg * 1.5 / 360, curve.atEnd().plasticStretchMm(), 1e-9);
        assertEquals(curve.atEnd().plasticStretchMm() / 380, curve.atEnd().plasticStrain(), 1e-12);
    }

    @Test
    void the_soft_toe_moves_the_origin_and_nothing_else() {
        var toe = TighteningCurve.of(
                new Tightening(JOINT, 15, 200, 1, new Seating(0.1, 1_500), TorsionRule.FULLY_PLASTIC));
        var hard = TighteningCurve.of(new Tightening(JOINT, 15, 200, 1, Seating.none(), TorsionRule.FULLY_PLASTIC));
        assertEquals(0.1 / 1.5 * 360, toe.elasticOriginDeg(), 1e-12);
        assertEquals(hard.preloadN(300), toe.preloadN(300 + toe.elasticOriginDeg()), 1e-3);
        assertTrue(toe.preloadN(toe.elasticOriginDeg()) > 0);
        assertEquals(1, toe.torqueNm(-5));
    }

    @Test
    void a_snug_torque_beyond_yield_is_refused() {
        var refusal = assertThrows(IllegalArgumentException.class, () -> curve(JOINT, 100, 360));
        assertTrue(
                refusal.getMessage().startsWith("snugTorqueNm is 100.0; it must be below the torque at first yield, "),
                refusal.getMessage());
    }

    /** Two springs in a row: 0.16 N·m/deg at the head through a drive of 0.16 N·m/deg is seen as half. */
    @Test
    void a_soft_drive_is_seen_as_a_lower_rate() {
        assertEquals(0.08, WindUp.rateSeenNmPerDeg(0.16, 0.16), 1e-12);
        assertEquals(2.5, WindUp.driveDeg(50, 20), 1e-12);
    }

    static BoltedJoint withYield(double yieldMPa) {
        return new BoltedJoint(
                JOINT.bolt().withMaterial(JOINT.bolt().material().withYieldStrengthMPa(yieldMPa)),
                JOINT.layers(),
                JOINT.friction());
    }

    private static TighteningCurve curve(BoltedJoint joint, double snugTorqueNm, double turnDeg) {
        return TighteningCurve.of(Tightening.of(joint, snugTorqueNm, turnDeg));
    }
}
