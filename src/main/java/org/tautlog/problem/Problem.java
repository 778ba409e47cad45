package org.tautlog.problem;

import java.util.Objects;

/**
 * One thing wrong with what was given: what, where, what was expected and what to do.
 *
 * @param code the kind of trouble
 * @param where the place
 * @param what what is wrong, as a sentence without its full stop
 * @param expected what was expected instead; empty where the first sentence says it
 * @param action what to do about it; empty where nothing can be done
 */
public record Problem(ProblemCode code, Where where, String what, String expected, String action) {
    public Problem {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(action, "action");
        if (what.isBlank()) {
            throw new IllegalArgumentException("a problem must say what is wrong");
        }
    }

    /** {@return the problem as one line: place, what, expected, action} */
    public String sentence() {
        var text = new StringBuilder(where.toString());
        if (!text.isEmpty()) {
            text.append(": ");
        }
        text.append(what);
        if (!expected.isEmpty()) {
            text.append("; expected ").append(expected);
        }
        if (!action.isEmpty()) {
            text.append("; ").append(action);
        }
        return text.toString();
    }
}
