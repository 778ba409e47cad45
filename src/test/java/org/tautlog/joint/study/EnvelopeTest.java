package org.tautlog.joint.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.Joints;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.warmup.Temperatures;

class EnvelopeTest {
    private static final Tightening NOMINAL = Tightening.of(Joints.longThroughBolt(), 15, 300);
    private static final ToleranceStudy STUDY = study(Map.of(
            Factor.YIELD_STRENGTH, Spread.normal(20),
            Factor.FRICTION, Spread.normal(0.008),
            Factor.TURN, Spread.even(3)));
    private static final Envelope ENVELOPE = Envelope.of(STUDY, 1_000, 30);

    @Test
    void each_range_holds_its_middle_and_the_curves_rise() {
        double before = -1;
        for (var band : ENVELOPE.bands()) {
            var load = band.preloadN();
            assertTrue(load.low() <= load.median() && load.median() <= load.high(), band::toString);
            assertTrue(load.median() > before, band::toString);
            before = load.median();
        }
    }

    @Test
    void with_nothing_astray_all_curves_are_the_nominal_one() {
        var still = Envelope.of(study(Map.of()), 100, 10);
        var curve = TighteningCurve.of(NOMINAL);
        for (var band : still.bands()) {
            double preloadN = curve.preloadN(curve.snugAngleDeg() + band.pastSnugDeg());
            assertEquals(preloadN, band.preloadN().low(), 1e-6);
            assertEquals(preloadN, band.preloadN().high(), 1e-6);
            assertEquals(curve.torqueNmAtPreload(preloadN), band.torqueNm().median(), 1e-9);
        }
    }

    /** Two ways to the same number: the study's own percentile at the end, the envelope's at the same angle. */
    @Test
    void at_the_end_of_the_turn_the_envelope_agrees_with_the_study() {
        double median =
                STUDY.run().summary(Quantity.FINAL_PRELOAD).percentiles().get(4).value();
        var bands = ENVELOPE.bands();
        int end = 0;
        while (bands.get(end + 1).pastSnugDeg() <= NOMINAL.turnDeg()) {
            end++;
        }
        assertTrue(bands.get(end).preloadN().median() <= median * 1.005);
        assertTrue(bands.get(end + 1).preloadN().median() >= median * 0.995);
    }

    @Test
    void no_bolt_gains_clamp_load_by_its_first_warm_up() {
        assertEquals(1_000, ENVELOPE.pairs().size());
        assertTrue(ENVELOPE.pairs().stream().allMatch(pair -> pair.coldAfterN() <= pair.tightenedN() + 1e-6));
    }

    @Test
    void the_same_study_gives_the_same_envelope() {
        assertEquals(ENVELOPE, Envelope.of(STUDY, 1_000, 30));
    }

    private static ToleranceStudy study(Map<Factor, Spread> spreads) {
        return new ToleranceStudy(
                NOMINAL, Temperatures.even(Joints.longThroughBolt(), 20, 100), 0.5, 0, spreads, 5_000, 3, 0.99);
    }
}
