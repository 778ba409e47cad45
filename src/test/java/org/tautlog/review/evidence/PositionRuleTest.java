package org.tautlog.review.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tautlog.archive.KeptDecision;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Verdict;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.signature.EndState;

/** A bolt taken past its yield onset is not as new: common practice, no source. */
class PositionRuleTest {
    private static final String BOLT = "8";

    /** The attempts are made at 06:01. */
    private static final OffsetDateTime BEFORE = OffsetDateTime.parse("2026-03-17T05:00:00+01:00");

    private static final OffsetDateTime AFTER = OffsetDateTime.parse("2026-03-17T07:00:00+01:00");

    @Test
    void a_repeat_after_an_elastic_attempt_needs_no_decision() {
        assertEquals(PositionStanding.CONFORMING, standing(EndState.ELASTIC));
    }

    @Test
    void a_repeat_past_onset_stands_open_without_a_decision() {
        assertEquals(PositionStanding.UNDECIDED_REPEAT, standing(EndState.PLASTIC));
        assertEquals(PositionStanding.UNDECIDED_REPEAT, standing(EndState.ONSET_ZONE));
        assertEquals(PositionStanding.UNDECIDED_REPEAT, standing(EndState.UNKNOWN));
    }

    @Test
    void a_decision_for_a_new_bolt_closes_it_and_a_later_acceptance_keeps_it_closed() {
        assertEquals(PositionStanding.CONFORMING, standing(EndState.PLASTIC, DecisionAction.RE_TIGHTEN));
        assertEquals(
                PositionStanding.CONFORMING, standing(EndState.PLASTIC, DecisionAction.REPLACE, DecisionAction.ACCEPT));
    }

    @Test
    void acceptance_alone_is_no_new_bolt_and_a_quarantine_revokes_one() {
        assertEquals(PositionStanding.UNDECIDED_REPEAT, standing(EndState.PLASTIC, DecisionAction.ACCEPT));
        assertEquals(
                PositionStanding.UNDECIDED_REPEAT,
                standing(EndState.PLASTIC, DecisionAction.RE_TIGHTEN, DecisionAction.QUARANTINE));
    }

    @Test
    void a_second_attempt_whose_first_is_not_kept_stands_open() {
        var second = tightening(2, Verdict.CONFORMING, EndState.ELASTIC, 1);
        var position = PositionRule.of("S40", BOLT, List.of(second), List.of());
        assertEquals(Repeat.Need.EARLIER_MISSING, position.repeats().get(0).need());
        assertEquals(PositionStanding.UNDECIDED_REPEAT, position.standing());
    }

    @Test
    void an_acceptance_covers_what_was_in_the_archive_and_no_attempt_after() {
        var first = tightening(1, Verdict.NONCONFORMING, EndState.ELASTIC, 1);
        var later = tightening(2, Verdict.NONCONFORMING, EndState.ELASTIC, 3);
        for (var bolt : List.of(BOLT, "")) {
            var accept = List.of(decision(2, bolt, DecisionAction.ACCEPT, AFTER));
            assertEquals(PositionStanding.DECIDED, of(List.of(first), accept).standing());
            var outrun = of(List.of(first, later), accept);
            assertEquals(PositionStanding.NONCONFORMING, outrun.standing());
            assertEquals(accept.get(0), outrun.outrun().orElseThrow());
            assertEquals(Soundness.NOT_SOUND, Soundness.of(List.of(outrun), accept, List.of()));
        }
    }

    @Test
    void what_an_archive_lost_leaves_an_engine_unknown_and_what_a_killed_run_left_does_not() {
        var sound = of(List.of(tightening(1, Verdict.CONFORMING, EndState.ELASTIC, 1)), List.of());
        assertEquals(Soundness.NOT_KNOWN, withProblem(sound, ProblemCode.MISSING));
        assertEquals(Soundness.NOT_KNOWN, withProblem(sound, ProblemCode.UNEXPECTED));
        assertEquals(Soundness.SOUND, withProblem(sound, ProblemCode.LEFTOVER));
    }

    private static Soundness withProblem(BoltPosition position, ProblemCode code) {
        var problem = new Problem(code, Where.file("batches"), "as told", "", "");
        return Soundness.of(List.of(position), List.of(), List.of(problem));
    }

    /** A person accepts what lies before them: common practice, no source. */
    @Test
    void an_acceptance_does_not_cover_what_a_later_version_judges_worse() {
        var review = said("3", Verdict.REVIEW, 1, FindingCode.SOFT_SEATING);
        var accept = List.of(decision(2, BOLT, DecisionAction.ACCEPT, AFTER));
        assertEquals(PositionStanding.DECIDED, rejudged(review, accept).standing());
        var worse = said("4", Verdict.NONCONFORMING, 3, FindingCode.SOFT_SEATING);
        var position = rejudged(worse, accept, review);
        assertEquals(PositionStanding.NONCONFORMING, position.standing());
        assertEquals(accept.get(0), position.outrun().orElseThrow());
        assertEquals(review, position.last().orElseThrow().knownAt(2).orElseThrow());
        var anew = List.of(accept.get(0), decision(4, BOLT, DecisionAction.ACCEPT, AFTER));
        assertEquals(PositionStanding.DECIDED, rejudged(worse, anew, review).standing());
    }

    @Test
    void a_finding_that_was_not_there_needs_a_new_decision_and_one_less_does_not() {
        var both = said("4", Verdict.REVIEW, 3, FindingCode.SOFT_SEATING, FindingCode.STICK_SLIP);
        var one = said("3", Verdict.REVIEW, 1, FindingCode.SOFT_SEATING);
        var accept = List.of(decision(2, BOLT, DecisionAction.ACCEPT, AFTER));
        assertEquals(PositionStanding.REVIEW, rejudged(both, accept, one).standing());
        var fewer = said("4", Verdict.REVIEW, 3, FindingCode.SOFT_SEATING);
        var more = said("3", Verdict.REVIEW, 1, FindingCode.SOFT_SEATING, FindingCode.STICK_SLIP);
        assertEquals(PositionStanding.DECIDED, rejudged(fewer, accept, more).standing());
        var grave = said("3", Verdict.NONCONFORMING, 1, FindingCode.SOFT_SEATING);
        assertEquals(PositionStanding.DECIDED, rejudged(fewer, accept, grave).standing());
    }

    private static BoltPosition rejudged(Said standing, List<KeptDecision> decisions, Said... before) {
        var said = new ArrayList<>(List.of(before));
        said.add(standing);
        var judgement = EvidenceMade.judgement(1, BOLT, 1, standing.verdict(), EndState.ELASTIC);
        return of(List.of(new EngineTightening(judgement, 1, said, null)), decisions);
    }

    @Test
    void one_new_bolt_is_for_one_attempt() {
        var attempts = List.of(
                tightening(1, Verdict.NONCONFORMING, EndState.PLASTIC, 1),
                tightening(2, Verdict.NONCONFORMING, EndState.PLASTIC, 3),
                tightening(3, Verdict.CONFORMING, EndState.ELASTIC, 4));
        var one = decision(2, BOLT, DecisionAction.RE_TIGHTEN, BEFORE);
        var position = of(attempts, List.of(one));
        assertEquals(PositionStanding.UNDECIDED_REPEAT, position.standing());
        assertEquals(one, position.repeats().get(0).decision().orElseThrow());
        assertFalse(position.repeats().get(0).decidedAfter(), "decided first");
        assertTrue(position.repeats().get(1).undecided(), "the third attempt");
        var two = of(attempts, List.of(one, decision(5, BOLT, DecisionAction.REPLACE, AFTER)));
        assertEquals(PositionStanding.CONFORMING, two.standing());
        assertTrue(two.repeats().get(1).decidedAfter(), "decided after the third attempt");
    }

    @Test
    void two_decisions_before_one_attempt_do_not_allow_two() {
        var attempts = List.of(
                tightening(1, Verdict.NONCONFORMING, EndState.PLASTIC, 1),
                tightening(2, Verdict.NONCONFORMING, EndState.PLASTIC, 4),
                tightening(3, Verdict.CONFORMING, EndState.ELASTIC, 5));
        var decisions = List.of(
                decision(2, BOLT, DecisionAction.RE_TIGHTEN, BEFORE),
                decision(3, BOLT, DecisionAction.RE_TIGHTEN, BEFORE));
        assertTrue(of(attempts, decisions).repeats().get(1).undecided(), "the third attempt");
    }

    @Test
    void a_decision_after_the_fact_is_told_from_one_before() {
        var attempts = List.of(
                tightening(1, Verdict.NONCONFORMING, EndState.PLASTIC, 1),
                tightening(2, Verdict.CONFORMING, EndState.ELASTIC, 1));
        var position = of(attempts, List.of(decision(2, BOLT, DecisionAction.RE_TIGHTEN, AFTER)));
        assertEquals(PositionStanding.CONFORMING, position.standing());
        assertTrue(position.repeats().get(0).decidedAfter(), "in the archive when it was decided");
        var imported = List.of(attempts.get(0), tightening(2, Verdict.CONFORMING, EndState.ELASTIC, 3));
        assertTrue(
                of(imported, List.of(decision(2, BOLT, DecisionAction.RE_TIGHTEN, AFTER)))
                        .repeats()
                        .get(0)
                        .decidedAfter(),
                "imported later, made before by its own time");
    }

    @Test
    void a_bolt_held_after_the_engine_was_accepted_is_accepted_no_longer() {
        var attempt = List.of(tightening(1, Verdict.NONCONFORMING, EndState.ELASTIC, 1));
        var accept = decision(2, "", DecisionAction.ACCEPT, AFTER);
        assertEquals(PositionStanding.DECIDED, of(attempt, List.of(accept)).standing());
        var held = decision(3, BOLT, DecisionAction.QUARANTINE, AFTER);
        assertEquals(
                PositionStanding.NONCONFORMING,
                of(attempt, List.of(accept, held)).standing());
        assertEquals(
                PositionStanding.NONCONFORMING,
                of(attempt, List.of(held, decision(4, "", DecisionAction.ACCEPT, AFTER)))
                        .standing(),
                "what holds one bolt is lifted for that bolt");
        assertEquals(
                PositionStanding.DECIDED,
                of(attempt, List.of(accept, decision(3, "5", DecisionAction.QUARANTINE, AFTER)))
                        .standing(),
                "another bolt");
    }

    private static PositionStanding standing(EndState firstEndedIn, DecisionAction... actions) {
        var attempts = List.of(
                tightening(1, Verdict.NONCONFORMING, firstEndedIn, 1),
                tightening(2, Verdict.CONFORMING, EndState.ELASTIC, 1));
        var decisions = Arrays.stream(actions)
                .map(action ->
                        new KeptDecision(2, AFTER, said(BOLT, action), action == actions[actions.length - 1], "", ""))
                .toList();
        return of(attempts, decisions).standing();
    }

    private static BoltPosition of(List<EngineTightening> attempts, List<KeptDecision> decisions) {
        return PositionRule.of("S40", BOLT, attempts, decisions);
    }

    private static KeptDecision decision(int entry, String bolt, DecisionAction action, OffsetDateTime time) {
        return new KeptDecision(entry, time, said(bolt, action), true, "", "");
    }

    private static Decision said(String bolt, DecisionAction action) {
        return new Decision("FW-01", bolt, action, "A. Reviewer", "a reason");
    }

    private static Said said(String version, Verdict verdict, int entry, FindingCode... found) {
        return new Said("joint", version, "", "1", verdict, Set.of(found), entry, "");
    }

    private static EngineTightening tightening(int attempt, Verdict verdict, EndState state, int importEntry) {
        return new EngineTightening(
                EvidenceMade.judgement(1, BOLT, attempt, verdict, state),
                importEntry,
                List.of(said("3", verdict, importEntry)),
                null);
    }
}
