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
        var end = curve(joint, 10, 360).atEnd();
        assertFalse(end.yielded());
        assertTrue(end.yieldShare() > 0.85, "share of yield: " + end.yieldShare());
        assertTrue(end.plasticStrain() < PlasticStretch.ELASTIC_LIMIT_STRAIN, "plastic strain: " + end.plasticStrain());
    }

    @Test
    void a_little_more_turn_goes_into_yield() {
        var end = curve(JOINT, 15, 460).atEnd();
        assertTrue(end.yielded());
        assertEquals(end.plasticStretchMm() / 380, end.plasticStrain(), 1e-3 * end.plasticStrain());
        assertTrue(end.plasticStrain() > 0.0005);
    }

    /** The definition of proof strength: 0.2 % plastic strain along the weakest section, here the 8.2 mm shank, which torsion shares. */
    @Test
    void at_the_yield_strength_a_round_knee_has_stretched_by_two_per_mille_of_equivalent_strain() {
        var curve = curve(JOINT, 15, 360);
        var yieldN = curve.firstYieldPreloadN();
        var axialShare = yieldN / (Math.PI / 4 * 8.2 * 8.2) / 940;
        assertEquals(0.002 * axialShare, curve.plasticStrain(curve.headAngleDeg(yieldN)), 1e-9);
    }

    /** Common practice, no source: onset is where the gradient has fallen to half of the elastic one. */
    @Test
    void at_onset_the_gradient_is_half_the_elastic_one() {
        var curve = curve(JOINT, 15, 360);
        var onsetDeg = curve.onsetAngleDeg();
        var gradient = (curve.torqueNm(onsetDeg + 0.01) - curve.torqueNm(onsetDeg - 0.01)) / 0.02;
        assertEquals(0.5, gradient / curve.torqueRateNmPerDeg(), 0.001);
        var share = curve.onsetPreloadN() / curve.firstYieldPreloadN();
        assertTrue(share > 0.88 && share < 0.97, "onset over yield: " + share);
        assertEquals(curve.torqueNm(onsetDeg), curve.onsetTorqueNm(), 1e-6);
    }

    /** Past yield each degree adds far less preload: both springs in a row with the hardening section's. */
    @Test
    void the_preload_rate_falls_at_the_knee() {
        var curve = sharp(JOINT, 360);
        var kneeDeg = curve.firstYieldAngleDeg();
        var before = curve.preloadN(kneeDeg - 1) - curve.preloadN(kneeDeg - 2);
        var after = curve.preloadN(kneeDeg + 2) - curve.preloadN(kneeDeg + 1);
        var material = JOINT.bolt().material();
        var hardeningNPerMm = material.plasticModulusMPa() * Math.PI / 4 * 8.2 * 8.2 / 380;
        var shearOverTension = curve.shankTorqueNm(1) * 1000 * 3 / 8.2;
        var plasticTwistDegPerMm = Math.toDegrees(3 / 8.2 * 3 * shearOverTension);
        var degPerN = 240 * (JOINT.resilienceMmPerN() + 1 / hardeningNPerMm)
                + curve.shankTwistDeg(1)
                + plasticTwistDegPerMm / hardeningNPerMm;
        assertEquals(curve.preloadRateNPerDeg(), before, 1e-6);
        assertEquals(1 / degPerN, after, 1e-6);
        assertEquals(curve.firstYieldPreloadN(), curve.onsetPreloadN(), 1e-9);
    }

    @Test
    void a_perfectly_plastic_bolt_holds_its_preload() {
        var material = JOINT.bolt().material();
        var flat = new BoltMaterial(
                material.youngsModulusMPa(), 940, 1040, material.expansionPerK(), material.uniformElongation(), 0);
        var joint = new BoltedJoint(JOINT.bolt().withMaterial(flat), JOINT.layers(), JOINT.friction());
        var curve = sharp(joint, 460);
        assertEquals(curve.firstYieldPreloadN(), curve.atEnd().preloadN(), 1e-9);
        var pastDeg = curve.finalAngleDeg() - curve.firstYieldAngleDeg();
        var twistDegPerMm = Math.toDegrees(9 / 8.2 * curve.shankTorqueNm(1) * 1000 * 3 / 8.2);
        assertEquals(pastDeg / (240 + twistDegPerMm), curve.atEnd().plasticStretchMm(), 1e-9);
        assertEquals(curve.atEnd().plasticStretchMm() / 380, curve.atEnd().plasticStrain(), 1e-12);
    }

    @Test
    void the_soft_toe_moves_the_origin_and_nothing_else() {
        var toe = TighteningCurve.of(
                new Tightening(JOINT, 15, 200, 1, new Seating(0.1, 1_500), TorsionRule.FULLY_PLASTIC, Knee.ROUND));
        var hard = TighteningCurve.of(
                new Tightening(JOINT, 15, 200, 1, Seating.none(), TorsionRule.FULLY_PLASTIC, Knee.ROUND));
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

    private static TighteningCurve sharp(BoltedJoint joint, double turnDeg) {
        return TighteningCurve.of(
                new Tightening(joint, 15, turnDeg, 0, Seating.none(), TorsionRule.FULLY_PLASTIC, Knee.SHARP));
    }

    private static TighteningCurve curve(BoltedJoint joint, double snugTorqueNm, double turnDeg) {
        return TighteningCurve.of(Tightening.of(joint, snugTorqueNm, turnDeg));
    }
}
