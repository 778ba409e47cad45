package org.tautlog.review.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.stream.Stream;
import org.tautlog.signature.EndState;

class BracketingTest {
    private static final Stream SPINDLE = new Stream("S40", "2");

    @Test
    void the_bracket_runs_from_last_known_good_to_first_known_good() {
        var found = bracket(line(Set.of(10, 12), Set.of()));
        assertEquals("FW-09", found.lastGood().orElseThrow().serial());
        assertEquals("FW-13", found.firstGood().orElseThrow().serial());
        assertEquals(List.of("FW-10", "FW-11", "FW-12"), found.engines());
    }

    @Test
    void an_engine_without_a_recording_is_suspect() {
        var found = bracket(line(Set.of(10, 12), Set.of(11)));
        assertEquals(List.of("FW-10", "FW-11", "FW-12"), found.engines());
        assertTrue(found.contained().contains(new Contained("FW-11", Contained.Reason.NO_RECORDING, null)));
    }

    @Test
    void too_few_good_ones_leave_the_bracket_open() {
        var found = bracket(line(Set.of(3, 17), Set.of()));
        assertTrue(found.lastGood().isEmpty() && found.firstGood().isEmpty(), found.toString());
        assertEquals(20, found.contained().size());
    }

    private static Containment bracket(List<Judgement> judgements) {
        return new Bracketing(judgements)
                .around(SPINDLE, null, one -> one.verdict() == Verdict.NONCONFORMING)
                .orElseThrow();
    }

    /** Twenty engines on two spindles; on the second some do not conform and some were not recorded. */
    private static List<Judgement> line(Set<Integer> bad, Set<Integer> unrecorded) {
        var judgements = new ArrayList<Judgement>();
        for (int engine = 0; engine < 20; engine++) {
            judgements.add(EvidenceMade.judgement(engine, "1", 1, Verdict.CONFORMING, EndState.ELASTIC));
            if (!unrecorded.contains(engine)) {
                var verdict = bad.contains(engine) ? Verdict.NONCONFORMING : Verdict.CONFORMING;
                judgements.add(EvidenceMade.judgement(engine, "2", 1, verdict, EndState.ELASTIC));
            }
        }
        return judgements;
    }
}
