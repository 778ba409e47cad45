package org.tautlog.signature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.trace.Curve;

/** Curves that say little or nothing: every feature that cannot be read says why. */
class OddCurvesTest {
    private static Signature read(double[] angle, double[] torque) {
        return SignatureReader.read(Curve.of(angle, torque), new TighteningMethod(20, 360), ReadingRule.withDefaults());
    }

    private static double[] rising(int n, double step) {
        return IntStream.range(0, n).mapToDouble(i -> i * step).toArray();
    }

    private static double[] constant(int n, double value) {
        var values = new double[n];
        Arrays.fill(values, value);
        return values;
    }

    private static void saysWhy(Signature signature) {
        assertFalse(signature.snug().angleDeg().isFound());
        assertFalse(signature.elastic().torqueRateNmPerDeg().isFound());
        assertFalse(signature.onset().angleDeg().isFound());
        assertEquals(EndState.UNKNOWN, signature.onset().endState());
        assertTrue(signature.snug().angleDeg().whyMissing().length() > 10);
        assertTrue(signature.elastic().torqueRateNmPerDeg().whyMissing().length() > 10);
    }

    @Test
    void one_sample_is_a_final_point_and_nothing_else() {
        var signature = read(new double[] {12}, new double[] {25});
        saysWhy(signature);
        assertEquals(12, signature.end().angleDeg().number());
        assertEquals(25, signature.end().peakTorqueNm().number());
    }

    @Test
    void two_samples_at_one_angle_say_nothing() {
        saysWhy(read(new double[] {5, 5}, new double[] {1, 30}));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-30, 0, 5})
    void a_torque_that_stands_below_the_snug_torque_is_never_snug(double torqueNm) {
        saysWhy(read(rising(500, 0.5), constant(500, torqueNm)));
    }

    @Test
    void a_torque_that_only_falls_has_no_elastic_line() {
        var torque = IntStream.range(0, 500).mapToDouble(i -> 60 - 0.1 * i).toArray();
        var signature = read(rising(500, 0.5), torque);
        assertFalse(signature.elastic().torqueRateNmPerDeg().isFound());
        assertEquals(
                "the torque does not rise past the snug point",
                signature.elastic().originDeg().whyMissing());
    }

    @Test
    void an_angle_that_only_runs_back_says_nothing() {
        saysWhy(read(IntStream.range(0, 300).mapToDouble(i -> -i).toArray(), constant(300, 40)));
    }

    @Test
    void numbers_beyond_all_sense_say_so() {
        var signature = read(new double[] {0, 1e300, 2}, new double[] {1, -1e300, 30});
        saysWhy(signature);
        assertTrue(signature.snug().angleDeg().whyMissing().startsWith("an angle or a torque lies beyond"));
    }

    @Test
    void a_loosening_is_no_tightening() {
        saysWhy(read(
                rising(400, 5.32),
                IntStream.range(0, 400)
                        .mapToDouble(i -> -3 * Math.exp(-i / 60.0))
                        .toArray()));
    }

    @Test
    void negative_torque_before_the_start_does_not_disturb() {
        var made = new MadeCurve();
        made.torqueOfRundown = deg -> deg < 30 ? -4 : 0;
        made.noiseShare = 0.002;
        var signature = AccuracyTest.read(made);
        assertEquals(made.snugDeg(), signature.snug().angleDeg().number(), 1);
        assertEquals(made.prevailingNm, signature.prevailingTorqueNm().number(), 0.05);
    }

    @Test
    void twenty_thousand_samples_and_fifty_samples_are_read_alike() {
        var made = new MadeCurve();
        made.stepDeg = 0.06;
        var fine = AccuracyTest.read(made);
        made.stepDeg = 12;
        made.rundownDeg = 120;
        var coarse = AccuracyTest.read(made);
        assertTrue(fine.samples() > 19_000 && coarse.samples() < 75, fine.samples() + " and " + coarse.samples());
        assertEquals(1, fine.elastic().torqueRateNmPerDeg().number() / made.rateNmPerDeg, 0.001);
        assertEquals(1, coarse.elastic().torqueRateNmPerDeg().number() / made.rateNmPerDeg, 0.01);
        assertEquals(made.turnDeg, coarse.end().turnDeg().number(), 2);
    }

    @Test
    void the_last_sample_is_never_the_final_point() {
        var made = new MadeCurve();
        var curve = made.make();
        var signature = AccuracyTest.read(made);
        assertEquals(0, curve.torqueNm(curve.size() - 1), 1e-9);
        assertEquals(made.stopDeg(), signature.end().angleDeg().number(), 0.01);
        assertEquals(made.clean(made.stopDeg()), signature.end().torqueNm().number(), 0.1);
        assertEquals(made.springBackDeg, signature.marks().springBackDeg().number(), 0.01);
    }

    @Test
    void a_single_wild_angle_is_left_out_and_marked() {
        var curve = new MadeCurve().make();
        var angle = curve.anglesDeg();
        angle[700] = 9999;
        var signature = read(angle, curve.torquesNm());
        assertEquals(new MadeCurve().stopDeg(), signature.end().angleDeg().number(), 0.01);
        assertTrue(signature.marks().angleJumpDeg().number() > 8000);
    }

    @Test
    void a_recording_without_rundown_has_no_prevailing_torque_but_an_origin_with_its_doubt() {
        var made = new MadeCurve();
        made.noiseShare = 0.002;
        var curve = made.make();
        int from = 0;
        while (curve.torqueNm(from) < 8) {
            from++;
        }
        var part = MadeCurve.part(curve, from, curve.size());
        var signature = SignatureReader.read(part, new TighteningMethod(20, 360), ReadingRule.withDefaults());
        assertFalse(signature.prevailingTorqueNm().isFound());
        var origin = signature.elastic().originDeg();
        assertTrue(Math.abs(origin.number() - made.originDeg()) < 2 * origin.standardUncertainty(), origin.toString());
    }
}
