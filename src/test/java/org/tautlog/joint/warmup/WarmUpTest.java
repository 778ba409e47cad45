package org.tautlog.joint.warmup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Joints;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.joint.tightening.Tightened;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;

/** The long through-bolt on its first warm-up; numbers computed from the formulas, no outside source where none is named. */
class WarmUpTest {
    private static final double LOT_YIELD_MPA = 1000;
    private static final BoltedJoint JOINT = withYield(LOT_YIELD_MPA);

    @ParameterizedTest(name = "a rise of {0} K adds {1} kN")
    @CsvSource({"60,6.3", "80,8.3", "100,10.4"})
    void the_thermal_load_of_an_elastic_bolt(double riseK, double kN) {
        var result = elastic(JOINT, riseK).run(end(JOINT, 200));
        assertEquals(kN, result.thermalN() / 1000, 0.06);
        assertEquals(result.coldBeforeN() + result.thermalN(), result.hotN(), 1e-6);
    }

    /**
     * Common practice, no source: snug plus about one turn ends just short of yield, and the first warm-up takes the bolt into
     * yield. A rise of 80 K does it for a lot of 1000 MPa.
     */
    @Test
    void short_of_yield_when_tightened_and_in_yield_when_hot() {
        var tightened = TighteningCurve.of(Tightening.of(JOINT, 15, 350)).atEnd();
        var result = WarmUp.of(JOINT, Temperatures.even(JOINT, 20, 100)).run(tightened);
        assertFalse(result.yieldedAtAssembly());
        assertTrue(result.yieldsAtWarmUp());
        assertTrue(result.coldAfterN() < result.coldBeforeN());
        assertEquals(tightened.preloadN(), result.coldBeforeN(), 1e-6);
        assertEquals(result.plasticStretchMm() / JOINT.resilienceMmPerN(), result.lostN(), 1e-6);
        assertTrue(result.usedElongationShare() < 0.05, "used: " + result.usedElongationShare());
    }

    /** Common practice claims nearly 1 mm more by warm-up; over 380 mm that needs some 230 K, which no coolant reaches. */
    @Test
    void a_claimed_millimetre_over_380_does_not_fit_80_kelvin() {
        var hot = Temperatures.even(JOINT, 20, 100);
        var claim = StretchClaim.check(JOINT, 1.0, hot);
        assertFalse(claim.fits());
        assertEquals(
                "The stated further stretch of 1.00 mm does not fit: the stated temperatures, as much as an even rise of 80 K,"
                        + " give 0.35 mm; 1.00 mm would need a rise of 229 K.",
                claim.sentence());
        assertEquals(
                "The stated further stretch of 0.34 mm fits: the stated temperatures give 0.35 mm.",
                StretchClaim.check(JOINT, 0.34, hot).sentence());
    }

    @Test
    void a_bolt_that_was_cut_down_ends_at_hot_yield_less_the_thermal_load() {
        var result = elastic(JOINT, 100).run(end(JOINT, 380));
        assertTrue(result.yieldsAtWarmUp());
        assertEquals(result.hotN() - result.thermalN(), result.coldAfterN(), 1e-6);
    }

    @Test
    void embedding_comes_off_first() {
        var embedded = new WarmUp(
                JOINT,
                Temperatures.even(JOINT, 20, 20),
                HotStrength.unchanged(),
                0.5,
                0.011,
                TorsionRule.FULLY_PLASTIC,
                Knee.SHARP);
        var tightened = end(JOINT, 300);
        assertEquals(
                tightened.preloadN() - 0.011 / JOINT.resilienceMmPerN(),
                embedded.run(tightened).coldBeforeN(),
                1e-6);
    }

    /** Torsion that relaxes gives the axial load room again: the standing yield lies above the turning one. */
    @Test
    void torsion_that_relaxes_leaves_room() {
        var end = end(JOINT, 450);
        var allStays = warmUp(1.0).run(end);
        var halfStays = warmUp(0.5).run(end);
        var noneStays = warmUp(0.0).run(end);
        assertTrue(end.yielded());
        assertEquals(end.preloadN(), allStays.hotYieldN(), 1e-6);
        assertTrue(halfStays.hotYieldN() > 1.04 * allStays.hotYieldN());
        assertTrue(noneStays.hotYieldN() > halfStays.hotYieldN());
    }

    /** ISO 898-1:1999 annex A, from memory: 940 MPa at 20, 875 at 100, 790 at 200 deg C; halfway by a straight line. */
    @ParameterizedTest(name = "{0} deg C: {1} MPa of 940")
    @CsvSource({"-30,940", "20,940", "60,907.5", "100,875", "150,832.5", "200,790", "300,705"})
    void heat_takes_strength(double temperatureC, double yieldMPa) {
        assertEquals(yieldMPa / 940, HotStrength.ofBoltSteel(temperatureC).yieldShare(), 1e-12);
    }

    @Test
    void wrong_temperatures_are_refused() {
        var two = new Temperatures(20, 90, List.of(90.0, 100.0));
        assertEquals(
                "layersC has 2 temperatures; the joint has 1 layers",
                assertThrows(IllegalArgumentException.class, () -> two.outgrowthMm(JOINT))
                        .getMessage());
        assertEquals(
                "temperatureC is 400.0; it must lie from -100.0 to 300.0 deg C",
                assertThrows(IllegalArgumentException.class, () -> HotStrength.ofBoltSteel(400))
                        .getMessage());
    }

    private static WarmUp warmUp(double torsionLeft) {
        return new WarmUp(
                JOINT,
                Temperatures.even(JOINT, 20, 20),
                HotStrength.unchanged(),
                torsionLeft,
                0,
                TorsionRule.FULLY_PLASTIC,
                Knee.SHARP);
    }

    private static WarmUp elastic(BoltedJoint joint, double riseK) {
        return new WarmUp(
                joint,
                Temperatures.even(joint, 20, 20 + riseK),
                HotStrength.unchanged(),
                0.5,
                0,
                TorsionRule.FULLY_PLASTIC,
                Knee.SHARP);
    }

    private static Tightened end(BoltedJoint joint, double turnDeg) {
        return TighteningCurve.of(
                        new Tightening(joint, 15, turnDeg, 0, Seating.none(), TorsionRule.FULLY_PLASTIC, Knee.SHARP))
                .atEnd();
    }

    private static BoltedJoint withYield(double yieldMPa) {
        var joint = Joints.longThroughBolt();
        return new BoltedJoint(
                joint.bolt().withMaterial(joint.bolt().material().withYieldStrengthMPa(yieldMPa)),
                joint.layers(),
                joint.friction());
    }
}
