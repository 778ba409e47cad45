package org.tautlog.review.evidence;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.KeptDecision;

/**
 * A further attempt on a bolt position. A bolt taken past its yield onset is no longer as new: another attempt conforms
 * only with a recorded decision to tighten a new bolt or to replace the part.
 *
 * @param attempt number of the attempt
 * @param need why a decision is needed, or that none is
 * @param decisionOrNull the decision to tighten a new bolt or to replace; null where there is none
 * @param decidedAfter whether the attempt was made first and decided on after
 */
public record Repeat(int attempt, Need need, @Nullable KeptDecision decisionOrNull, boolean decidedAfter) {
    /** Whether an earlier attempt asks for a decision. */
    public enum Need {
        /** Every earlier attempt left the bolt elastic. */
        NONE,
        /** An earlier attempt took the bolt past its onset. */
        PAST_ONSET,
        /** The curve of an earlier attempt does not tell; that counts as past onset. */
        NOT_TOLD,
        /** An earlier attempt is not in the archive; that counts as past onset. */
        EARLIER_MISSING
    }

    public Repeat {
        if (attempt < 1) {
            throw new IllegalArgumentException("attempt is " + attempt + "; attempts count from 1");
        }
    }

    /** {@return the decision; empty where there is none} */
    public Optional<KeptDecision> decision() {
        return Optional.ofNullable(decisionOrNull);
    }

    /** {@return whether a decision is needed and missing} */
    public boolean undecided() {
        return need != Need.NONE && decisionOrNull == null;
    }
}
