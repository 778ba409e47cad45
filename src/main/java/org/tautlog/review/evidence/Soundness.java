package org.tautlog.review.evidence;

import java.util.Collection;
import java.util.List;
import org.tautlog.archive.KeptDecision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;

/** Whether an engine may be called sound, gravest first. */
public enum Soundness {
    /** A bolt position does not conform. */
    NOT_SOUND,
    /** A person holds it back. */
    HELD,
    /**
     * Something is missing, could not be judged or was not decided, or the archive is not as it was kept: suspect until it
     * is known.
     */
    NOT_KNOWN,
    /** A person must look. */
    REVIEW,
    /** All that is not conforming is covered by recorded decisions. */
    SOUND_BY_DECISION,
    /** Every position that is known of conforms. */
    SOUND;

    /**
     * Whatever an archive has lost may speak against the engine: a recording that is worse, a decision that holds it. What a
     * killed run left behind is no loss.
     */
    static Soundness of(List<BoltPosition> positions, List<KeptDecision> decisions, Collection<Problem> problems) {
        var worst = positions.stream()
                .map(BoltPosition::standing)
                .min(PositionStanding::compareTo)
                .orElse(PositionStanding.MISSING);
        boolean held = decisions.stream()
                .anyMatch(one -> one.standing() && one.decision().action() == DecisionAction.QUARANTINE);
        var byPositions = switch (worst) {
            case NONCONFORMING -> NOT_SOUND;
            case MISSING, UNDECIDED_REPEAT, UNJUDGED -> NOT_KNOWN;
            case REVIEW -> REVIEW;
            case DECIDED -> SOUND_BY_DECISION;
            case CONFORMING -> SOUND;
        };
        boolean lost = problems.stream().anyMatch(problem -> problem.code() != ProblemCode.LEFTOVER);
        var known = byPositions.compareTo(NOT_KNOWN) > 0 && lost ? NOT_KNOWN : byPositions;
        return held && known.compareTo(HELD) > 0 ? HELD : known;
    }

    /** {@return whether nothing is left to do} */
    public boolean isSound() {
        return this == SOUND || this == SOUND_BY_DECISION;
    }
}
