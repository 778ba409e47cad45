package org.tautlog.review.evidence;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.KeptDecision;
import org.tautlog.archive.ledger.DecisionAction;

/**
 * How far a decision reaches. The ledger's own order says what was known when a person decided: clocks of stations may be
 * wrong, entries cannot change places.
 */
final class DecisionReach {
    private DecisionReach() {}

    /** The decision that a bolt position stands under: the last one, but what holds one bolt is lifted for that bolt only. */
    static Optional<KeptDecision> governing(String bolt, List<KeptDecision> decisions) {
        KeptDecision governing = null;
        for (var one : decisions) {
            if (one.standing() && isAbout(bolt, one) && !(holdsOneBolt(governing) && isOfEngine(one))) {
                governing = one;
            }
        }
        return Optional.ofNullable(governing);
    }

    /** The acceptance or release that a bolt position stands under. */
    static Optional<KeptDecision> acceptance(String bolt, List<KeptDecision> decisions) {
        return governing(bolt, decisions)
                .filter(one -> one.decision().action() == DecisionAction.ACCEPT
                        || one.decision().action() == DecisionAction.RELEASE);
    }

    /** Whether a person saw the attempt as it is judged now, or judged worse: nobody accepts what came to light later. */
    static boolean covers(KeptDecision decision, EngineTightening attempt) {
        return wasKnown(attempt, decision)
                && attempt.knownAt(decision.entry())
                        .filter(seen -> !attempt.standing().isWorseThan(seen))
                        .isPresent();
    }

    /** Nobody accepts what was not there to be seen. */
    static boolean wasKnown(EngineTightening attempt, KeptDecision decision) {
        return attempt.importEntry() < decision.entry();
    }

    /** What was imported later may have been made before: its own time tells, where it has one. */
    static boolean wasMadeAfter(EngineTightening attempt, KeptDecision decision) {
        var time = attempt.judgement().identity().time();
        return !wasKnown(attempt, decision) && (time == null || time.isAfter(decision.time()));
    }

    static boolean isAbout(String bolt, KeptDecision decision) {
        return isOfEngine(decision) || decision.decision().bolt().equals(bolt);
    }

    static boolean isOfEngine(KeptDecision decision) {
        return decision.decision().bolt().isEmpty();
    }

    private static boolean holdsOneBolt(@Nullable KeptDecision decision) {
        return decision != null && !isOfEngine(decision) && decision.decision().action() == DecisionAction.QUARANTINE;
    }
}
