package org.tautlog.review;

import java.util.Objects;
import org.tautlog.joint.window.FindingCode;

/**
 * Something to do about a kind of finding, in the order in which to do it.
 *
 * @param code the finding that asks for it
 * @param where the streams or engines concerned, in words
 * @param action what to do, as a sentence
 */
public record FirstAction(FindingCode code, String where, String action) {
    public FirstAction {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(where, "where");
        if (action.isBlank()) {
            throw new IllegalArgumentException("an action must say what to do");
        }
    }
}
