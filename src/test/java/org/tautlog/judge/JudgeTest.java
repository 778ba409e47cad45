package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.signature.MadeCurve;
import org.tautlog.trace.Trace;

class JudgeTest {
    @Test
    void a_curve_on_which_the_program_fails_is_unjudged_and_says_where() {
        var good = Cases.judge(Cases.good());
        var trace = new Trace(good.identity(), good.source(), Cases.good().make());
        var judgement = Judge.orUnjudged(trace, Cases.SPECIFICATION, (one, by) -> {
            throw new IllegalStateException("no way out");
        });
        assertEquals(Verdict.UNJUDGED, judgement.verdict());
        assertEquals(good.source(), judgement.source());
        var finding = judgement.findings().get(0);
        assertEquals(FindingCode.JUDGING_FAILED, finding.code());
        assertTrue(finding.message().contains("no way out at JudgeTest.java:"), finding.message());
    }

    @Test
    void good_tightenings_conform_without_a_finding() {
        for (int seed = 1; seed <= 100; seed++) {
            var made = Cases.good();
            made.seed = seed;
            made.kiloHertz = seed % 2;
            made.stages = seed % 3 == 0;
            made.kneeDeg = seed % 5 == 0 ? 460 : 1e6;
            var judgement = Cases.judge(made);
            assertEquals(List.of(), judgement.findings(), "seed " + seed);
            assertEquals(Verdict.CONFORMING, judgement.verdict());
        }
    }

    @Test
    void a_turn_stopped_short_is_told_from_a_recording_that_ends_early() {
        var made = Cases.good();
        made.turnDeg = 331.2;
        var stopped = Cases.judge(made);
        assertEquals(Verdict.NONCONFORMING, stopped.verdict());
        assertEquals(FindingCode.TURN_SHORT, stopped.findings().get(0).code());
        assertTrue(
                stopped.findings()
                        .get(0)
                        .message()
                        .matches("turn past the snug point is 33[01]\\.\\d deg; the window asks"
                                + " for 357 to 364 deg"),
                stopped.findings().get(0).message());
        var whole = Cases.good().make();
        var cut = Cases.judge(MadeCurve.cut(whole, whole.size() - 100));
        assertEquals(Verdict.UNJUDGED, cut.verdict());
        assertEquals(FindingCode.TRUNCATED, cut.findings().get(0).code());
        assertTrue(IntStream.range(0, cut.findings().size())
                .noneMatch(i -> cut.findings().get(i).code() == FindingCode.TURN_SHORT));
    }
}
