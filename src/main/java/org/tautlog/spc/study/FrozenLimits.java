package org.tautlog.spc.study;

import java.util.List;
import org.tautlog.spc.stream.StreamsLimits;

/**
 * Limits kept from phase 1: all that phase 2 needs.
 *
 * @param kind the chart they belong to
 * @param limits the chart room's own record of limits, of the kind's type
 * @param streams names of the streams by column; empty but for parallel streams
 */
public record FrozenLimits(StudyKind kind, Record limits, List<String> streams) {
    /** Checks that the limits belong to the kind and copies the list. */
    public FrozenLimits {
        if (!kind.limitsType().isInstance(limits))
            throw new IllegalArgumentException("limits are " + limits.getClass().getSimpleName() + "; " + kind.word()
                    + " needs " + kind.limitsType().getSimpleName());
        streams = List.copyOf(streams);
        if (limits instanceof StreamsLimits several
                && streams.size() != several.centres().size())
            throw new IllegalArgumentException("streams names " + streams.size() + " streams; the limits are of "
                    + several.centres().size());
    }
}
