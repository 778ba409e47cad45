package org.tautlog.trace;

import java.util.Objects;

/**
 * One recorded tightening, as the line exported it; never altered.
 *
 * @param identity what it is of
 * @param source where it was read
 * @param curve its samples
 */
public record Trace(TraceIdentity identity, Source source, Curve curve) {
    public Trace {
        Objects.requireNonNull(identity, "identity");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(curve, "curve");
    }
}
