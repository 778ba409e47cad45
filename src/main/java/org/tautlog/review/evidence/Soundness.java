package org.tautlog.review.evidence;

import java.util.List;
import org.tautlog.archive.KeptDecision;
import org.tautlog.archive.ledger.DecisionAction;

/** Whether an engine may be called sound, gravest first. */
public enum Soundness {
    /** A bolt position does not conform. */
    NOT_SOUND,
    /** A person holds it back. */
    HELD,
    /** Something is missing, could not be judged or was not decided: suspect until it is known. */
    NOT_KNOWN,
    /** A person must look. */
    REVIEW,
    /** All that is not conforming is covered by recorded decisions. */
    SOUND_BY_DECISION,
    /** Every position that is known of conforms. */
    SOUND;

    static Soundness of(List<BoltPosition> positions, List<KeptDecision> decisions) {
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
        return held && byPositions.compareTo(HELD) > 0 ? HELD : byPositions;
    }

    /** {@return whether nothing is left to do} */
    public boolean isSound() {
        return this == SOUND || this == SOUND_BY_DECISION;
    }
}
