package org.tautlog.review.evidence;

import java.util.Objects;
import org.tautlog.judge.Judgement;

/**
 * One recording on which two specifications disagree.
 *
 * @param first what the first says
 * @param second what the second says
 */
public record VerdictChange(Judgement first, Judgement second) {
    public VerdictChange {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        if (first.verdict() == second.verdict()) {
            throw new IllegalArgumentException(
                    "both verdicts on " + first.identity().words() + " are " + first.verdict() + "; that is no change");
        }
    }
}
