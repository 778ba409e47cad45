package org.tautlog.intake;

import org.tautlog.trace.Trace;

/** Takes traces as they are read. */
@FunctionalInterface
public interface TraceSink {
    /**
     * Takes the next trace, in reading order.
     *
     * @param trace a whole trace
     */
    void accept(Trace trace);
}
