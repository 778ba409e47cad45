package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Trace;

/** What must hold whatever units an export was read in. */
class JudgeLaws {
    private static final List<Trace> TRACES = SimulatedLine.of(1, 3)
            .tightenings()
            .limit(8)
            .map(tightening -> tightening.trace())
            .toList();

    /** A unit that is misread scales by so much at most: from milli to mega. */
    @Property(tries = 60)
    void a_tightening_read_in_wrong_units_is_judged_without_failing_and_never_passes_in_silence(
            @ForAll @IntRange(max = 7) int which,
            @ForAll @DoubleRange(min = -3, max = 6) double angle,
            @ForAll @DoubleRange(min = -3, max = 6) double torque) {
        var judgement = judged(TRACES.get(which), Math.pow(10, angle), Math.pow(10, torque));
        if (Math.abs(angle) > 0.1 || Math.abs(torque) > 0.2) {
            assertFalse(
                    judgement.verdict() == Verdict.CONFORMING,
                    () -> judgement.signature().toString());
        }
    }

    @Test
    void an_angle_in_thousandths_is_judged_without_failing() {
        TRACES.forEach(trace -> judged(trace, 1000, 1));
    }

    private static Judgement judged(Trace trace, double angle, double torque) {
        var curve = trace.curve();
        var scaled = Curve.of(scaled(curve.anglesDeg(), angle), scaled(curve.torquesNm(), torque));
        var judgement =
                Judge.judge(new Trace(trace.identity(), trace.source(), scaled), FenwaterEngine.specification());
        assertFalse(
                Cases.has(judgement, FindingCode.JUDGING_FAILED),
                () -> judgement.findings().toString());
        return judgement;
    }

    private static double[] scaled(double[] values, double factor) {
        return Arrays.stream(values).map(value -> value * factor).toArray();
    }
}
