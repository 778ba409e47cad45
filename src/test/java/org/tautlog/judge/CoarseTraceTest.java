package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.line.Fault;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.line.SimulatedTightening;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Trace;

/** The same tightenings as loggers of 50 to 20,000 samples would have recorded them: too little is said, never guessed. */
class CoarseTraceTest {
    private static final List<SimulatedTightening> SHIFT =
            SimulatedLine.of(64, 2).tightenings().toList();

    @ParameterizedTest
    @CsvSource({
        "count, 50", "count, 70", "count, 100", "count, 200", "count, 400", "count, 800",
        "angle, 50", "angle, 70", "angle, 100", "angle, 200", "angle, 400", "angle, 800",
        "last 500 deg, 50", "last 500 deg, 100", "last 500 deg, 200", "last 500 deg, 400"
    })
    void a_good_tightening_is_never_called_nonconforming_however_few_samples_are_left(String way, int samples) {
        var wronged = new ArrayList<String>();
        for (var done : SHIFT) {
            if (done.truth().fault() != Fault.NONE) {
                continue;
            }
            var judgement = judge(done, curve -> thin(curve, way, samples));
            if (judgement.verdict() == Verdict.NONCONFORMING) {
                wronged.add(done.trace().identity().words() + ": " + judgement.findings());
            }
        }
        assertEquals(List.of(), wronged);
    }

    @ParameterizedTest
    @CsvSource({
        "count, 50",
        "count, 100",
        "count, 200",
        "count, 400",
        "angle, 50",
        "angle, 100",
        "angle, 200",
        "angle, 400"
    })
    void a_fault_that_shows_in_the_curve_is_never_passed_for_want_of_samples(String way, int samples) {
        for (var done : SHIFT) {
            if (judge(done, curve -> curve).verdict() == Verdict.NONCONFORMING) {
                assertNotEquals(
                        Verdict.CONFORMING,
                        judge(done, curve -> thin(curve, way, samples)).verdict(),
                        done.trace().identity().words() + " " + done.truth().fault());
            }
        }
    }

    @Test
    void what_fifty_samples_leave_open_is_said_with_how_much() {
        var done = SHIFT.stream()
                .filter(it -> it.truth().fault() == Fault.NONE)
                .findFirst()
                .orElseThrow();
        var judgement = judge(done, curve -> Thinned.byCount(curve, 50));
        assertEquals(Verdict.UNJUDGED, judgement.verdict());
        assertTrue(
                judgement.findings().stream()
                        .anyMatch(finding -> finding.code() == FindingCode.TOO_FEW_SAMPLES
                                && finding.message().contains("give or take")),
                () -> judgement.findings().toString());
    }

    @Test
    void twenty_thousand_samples_say_what_the_recording_said() {
        for (var done : SHIFT.subList(0, 40)) {
            if (done.truth().fault() == Fault.NONE) {
                assertEquals(
                        Verdict.CONFORMING,
                        judge(done, curve -> Thinned.filledUp(curve, 20_000)).verdict(),
                        done.trace().identity().words());
            }
        }
    }

    private static Judgement judge(SimulatedTightening done, UnaryOperator<Curve> change) {
        var trace = done.trace();
        return Judge.judge(
                new Trace(trace.identity(), trace.source(), change.apply(trace.curve())),
                FenwaterEngine.specification());
    }

    private static Curve thin(Curve curve, String way, int samples) {
        return switch (way) {
            case "count" -> Thinned.byCount(curve, samples);
            case "angle" -> Thinned.byAngle(curve, samples);
            default -> Thinned.byCount(Thinned.last(curve, 500), samples);
        };
    }
}
