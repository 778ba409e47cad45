package org.tautlog.review.evidence;

import java.time.OffsetDateTime;
import java.util.Objects;

/**
 * A person's word that a level moved for good and for a known reason, such as a new bolt lot or a mended spindle: from a
 * moment on the new level is the good one.
 *
 * @param from the moment
 * @param by whose word it is; never blank
 * @param why the reason; never blank
 */
public record ExplainedStep(OffsetDateTime from, String by, String why) {
    public ExplainedStep {
        Objects.requireNonNull(from, "from");
        if (by.isBlank() || why.isBlank()) {
            throw new IllegalArgumentException(
                    "by is '" + by + "', why is '" + why + "'; an explained step needs a person and a reason");
        }
    }
}
