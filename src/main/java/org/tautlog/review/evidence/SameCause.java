package org.tautlog.review.evidence;

import java.util.List;
import java.util.Objects;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.trace.TraceIdentity;

/**
 * Other engines with the same first finding in the same place: perhaps of the same cause.
 *
 * @param code the finding
 * @param scope what they share besides
 * @param name which spindle, in words, or which lot
 * @param others the other tightenings, in order of time
 * @param of how many tightenings of other engines were looked at there
 */
public record SameCause(FindingCode code, Scope scope, String name, List<TraceIdentity> others, int of) {
    /** What two tightenings may share. */
    public enum Scope {
        /** The same spindle. */
        SPINDLE,
        /** The same bolt lot. */
        LOT
    }

    public SameCause {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(scope, "scope");
        Objects.requireNonNull(name, "name");
        others = List.copyOf(others);
        if (others.size() > of) {
            throw new IllegalArgumentException("others are " + others.size() + " of " + of + "; they cannot be more");
        }
    }
}
