package org.tautlog.line;

import java.util.List;
import java.util.Objects;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/**
 * One simulated tightening: what the line exports of it, what a laboratory would have measured, and what really happened.
 *
 * @param trace the recording
 * @param measured what a load cell under the head would have shown; without points where the tightening has a fault
 * @param truth what really happened
 */
public record SimulatedTightening(Trace trace, MeasuredClampLoad measured, Truth truth) {
    public SimulatedTightening {
        Objects.requireNonNull(trace, "trace");
        Objects.requireNonNull(measured, "measured");
        Objects.requireNonNull(truth, "truth");
    }

    /**
     * A tightening on which nothing was measured.
     *
     * @param trace the recording
     * @param truth what really happened
     */
    public SimulatedTightening(Trace trace, Truth truth) {
        this(trace, unmeasured(trace.identity()), truth);
    }

    private static MeasuredClampLoad unmeasured(TraceIdentity identity) {
        return new MeasuredClampLoad(identity.serial(), identity.bolt(), identity.attempt(), List.of());
    }
}
