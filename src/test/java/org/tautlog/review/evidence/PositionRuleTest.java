package org.tautlog.review.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.archive.KeptDecision;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.judge.Verdict;
import org.tautlog.signature.EndState;

/** A bolt taken past its yield onset is not as new: common practice, no source. */
class PositionRuleTest {
    private static final String BOLT = "8";

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
        var second = tightening(2, Verdict.CONFORMING, EndState.ELASTIC);
        var position = PositionRule.of("S40", BOLT, List.of(second), List.of());
        assertEquals(Repeat.Need.EARLIER_MISSING, position.repeats().get(0).need());
        assertEquals(PositionStanding.UNDECIDED_REPEAT, position.standing());
    }

    private static PositionStanding standing(EndState firstEndedIn, DecisionAction... actions) {
        var attempts = List.of(
                tightening(1, Verdict.NONCONFORMING, firstEndedIn),
                tightening(2, Verdict.CONFORMING, EndState.ELASTIC));
        var decisions = Arrays.stream(actions)
                .map(action -> new KeptDecision(
                        1,
                        OffsetDateTime.parse("2026-03-17T07:00:00+01:00"),
                        new Decision("FW-01", BOLT, action, "A. Reviewer", "a reason"),
                        action == actions[actions.length - 1],
                        "",
                        ""))
                .toList();
        return PositionRule.of("S40", BOLT, attempts, decisions).standing();
    }

    private static EngineTightening tightening(int attempt, Verdict verdict, EndState state) {
        return new EngineTightening(
                EvidenceMade.judgement(1, BOLT, attempt, verdict, state),
                List.of(new Said("joint", "3", "", "1", verdict, "")),
                null);
    }
}
