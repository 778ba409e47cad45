package org.tautlog.review.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.time.OffsetDateTime;
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
    void the_bracket_runs_from_last_known_good_to_first_known_good() throws IOException {
        var found = bracket(line(Set.of(10, 12), Set.of()));
        assertEquals("FW-09", found.lastGood().orElseThrow().serial());
        assertEquals("FW-13", found.firstGood().orElseThrow().serial());
        assertEquals(List.of("FW-10", "FW-11", "FW-12"), found.engines());
    }

    @Test
    void an_engine_without_a_recording_is_suspect() throws IOException {
        var found = bracket(line(Set.of(10, 12), Set.of(11)));
        assertEquals(List.of("FW-10", "FW-11", "FW-12"), found.engines());
        assertTrue(found.contained().contains(new Contained("FW-11", Contained.Reason.NO_RECORDING, null)));
    }

    @Test
    void too_few_good_ones_leave_the_bracket_open() throws IOException {
        var found = bracket(line(Set.of(3, 17), Set.of()));
        assertTrue(found.lastGood().isEmpty() && found.firstGood().isEmpty(), found.toString());
        assertEquals(20, found.contained().size());
    }

    @Test
    void clocks_that_may_differ_move_both_ends_out_and_say_so() throws IOException {
        var minutes = Duration.between(time(8), time(10));
        var found = bracket(line(Set.of(10, 12), Set.of()), minutes);
        assertEquals("FW-07", found.lastGood().orElseThrow().serial());
        assertEquals("FW-15", found.firstGood().orElseThrow().serial());
        var reasons = found.contained().stream().map(Contained::reason).toList();
        assertEquals(
                List.of(
                        Contained.Reason.CLOCK_MARGIN,
                        Contained.Reason.CLOCK_MARGIN,
                        Contained.Reason.SHOWS_IT,
                        Contained.Reason.INSIDE,
                        Contained.Reason.SHOWS_IT,
                        Contained.Reason.CLOCK_MARGIN,
                        Contained.Reason.CLOCK_MARGIN),
                reasons);
    }

    @Test
    void a_lot_met_inside_is_followed_to_every_other_spindle() throws IOException {
        var found = bracket(line(Set.of(10, 12), Set.of()));
        var lot = found.lots().get(0);
        assertEquals(3, lot.inside());
        assertEquals(37, lot.outside(), "40 tightenings, all of one lot");
        assertEquals(17, lot.enginesOutside());
        assertEquals(List.of("S40"), lot.stationsOutside());
    }

    private static OffsetDateTime time(int engine) {
        return EvidenceMade.judgement(engine, "2", 1, Verdict.CONFORMING, EndState.ELASTIC)
                .identity()
                .time();
    }

    private static Containment bracket(List<Judgement> judgements) throws IOException {
        return bracket(judgements, Duration.ZERO);
    }

    private static Containment bracket(List<Judgement> judgements, Duration clockMargin) throws IOException {
        return new Bracketing(new MadeStanding(judgements), clockMargin)
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
