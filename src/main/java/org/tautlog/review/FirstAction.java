package org.tautlog.review;

import java.util.List;
import java.util.Objects;
import org.tautlog.joint.window.FindingCode;

/**
 * Something to do about findings of a kind, in the order in which to do it.
 *
 * @param codes the findings that ask for it, gravest first, at least one
 * @param where the streams or engines concerned, in words
 * @param action what to do, as a sentence
 */
public record FirstAction(List<FindingCode> codes, String where, String action) {
    public FirstAction {
        codes = List.copyOf(codes);
        if (codes.isEmpty()) {
            throw new IllegalArgumentException("an action must name a finding that asks for it");
        }
        Objects.requireNonNull(where, "where");
        if (action.isBlank()) {
            throw new IllegalArgumentException("an action must say what to do");
        }
    }
}
