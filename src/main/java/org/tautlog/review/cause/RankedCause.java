package org.tautlog.review.cause;

import java.util.List;
import java.util.Objects;

/**
 * One cause with how likely it is.
 *
 * @param cause which
 * @param likelihood its share among all causes, none of them and chance, 0 to 1
 * @param size the size that fits best, a share of one or in the cause's unit
 * @param clues cues that speak for or against it; those that it neither moves nor explains badly are left out
 */
public record RankedCause(Cause cause, double likelihood, double size, List<Clue> clues) {
    private static final double ABOUT_AS_FAR = 0.5;

    public RankedCause {
        Objects.requireNonNull(cause, "cause");
        clues = List.copyOf(clues);
        if (!(likelihood >= 0 && likelihood <= 1)) {
            throw new IllegalArgumentException("likelihood is " + likelihood + "; it must lie from 0 to 1");
        }
    }

    /** {@return the cues that moved as the cause would move them} */
    public List<Clue> pro() {
        return clues.stream().filter(Clue::agrees).toList();
    }

    /** {@return the cues that the cause does not explain} */
    public List<Clue> contra() {
        return clues.stream().filter(clue -> !clue.agrees()).toList();
    }

    /** {@return the cues that speak against it although it would move them about as far as any: with one it is not named} */
    public List<Clue> contradicting() {
        double furthest =
                clues.stream().mapToDouble(Clue::foretoldSpreads).max().orElse(0);
        return contra().stream()
                .filter(clue -> clue.foretoldSpreads() >= ABOUT_AS_FAR * furthest)
                .toList();
    }
}
