package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.joint.window.FindingCode.RECORDING_SHIFTED;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.line.Fault;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Trace;

/** Torque that was recorded some samples before or after its angle. */
class OutOfStepTest {
    private static final List<Trace> GOOD = SimulatedLine.of(4, 5)
            .tightenings()
            .filter(done -> done.truth().fault() == Fault.NONE)
            .map(done -> done.trace())
            .toList();

    @ParameterizedTest(name = "by {0} samples")
    @ValueSource(ints = {20, 60, 120})
    void late_torque_is_unjudged_and_blamed_on_the_recording_alone(int samplesLate) {
        assertTrue(GOOD.size() > 20, "saw " + GOOD.size());
        for (var trace : GOOD) {
            var curve = shifted(trace.curve(), samplesLate);
            var judgement =
                    Judge.judge(new Trace(trace.identity(), trace.source(), curve), FenwaterEngine.specification());
            assertEquals(Verdict.UNJUDGED, judgement.verdict(), trace.identity().words());
            assertEquals(RECORDING_SHIFTED, judgement.findings().get(0).code());
        }
    }

    @ParameterizedTest(name = "{0} samples late, at {1} kHz, pause: {2}")
    @CsvSource({"4, 0, true", "4, 0, false", "60, 1, true", "60, 1, false", "-6, 0, true", "-60, 1, true"})
    void a_shift_of_the_length_of_the_spring_back_is_seen(int samplesLate, double kiloHertz, boolean pause) {
        for (int seed = 1; seed <= 20; seed++) {
            var made = Cases.good();
            made.seed = seed;
            made.kiloHertz = kiloHertz;
            made.pause = pause;
            var judgement = Cases.judge(shifted(made.make(), samplesLate));
            assertTrue(Cases.has(judgement, RECORDING_SHIFTED), "seed " + seed + ": " + judgement.findings());
        }
    }

    /** These exports show no run-back in the pause, so that early torque cannot be told from a thread that gives way. */
    @Test
    void early_torque_never_conforms() {
        for (var trace : GOOD) {
            var early = new Trace(trace.identity(), trace.source(), shifted(trace.curve(), -20));
            assertEquals(
                    Verdict.NONCONFORMING,
                    Judge.judge(early, FenwaterEngine.specification()).verdict());
        }
    }

    /** Torque that is gone before the one stop of a recording may be a broken bolt, so no shift is claimed. */
    @Test
    void a_bolt_that_breaks_is_no_shifted_recording() {
        for (boolean pause : new boolean[] {true, false}) {
            var made = Cases.good();
            made.pause = pause;
            made.torqueOfTurn = turn -> turn < 340 ? 1 : 0.02;
            assertTrue(!Cases.has(Cases.judge(made), RECORDING_SHIFTED));
        }
    }

    private static Curve shifted(Curve curve, int late) {
        int n = curve.size();
        var torque = IntStream.range(0, n)
                .mapToDouble(i -> curve.torqueNm(Math.max(0, Math.min(n - 1, i - late))))
                .toArray();
        var shifted = Curve.of(curve.anglesDeg(), torque);
        return curve.hasStages()
                ? shifted.withStages(IntStream.range(0, n).map(curve::stage).toArray())
                : shifted;
    }
}
