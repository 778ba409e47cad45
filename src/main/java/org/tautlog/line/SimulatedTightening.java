package org.tautlog.line;

import java.util.Objects;
import org.tautlog.trace.Trace;

/**
 * One simulated tightening: what the line exports of it, and what really happened.
 *
 * @param trace the recording
 * @param truth what really happened
 */
public record SimulatedTightening(Trace trace, Truth truth) {
    public SimulatedTightening {
        Objects.requireNonNull(trace, "trace");
        Objects.requireNonNull(truth, "truth");
    }
}
