package org.tautlog.archive;

import java.time.OffsetDateTime;
import java.util.Objects;

/**
 * Who writes and when, as the caller says: the archive has no clock of its own.
 *
 * @param program version of the program that writes
 * @param time the caller's time
 */
public record Stamp(String program, OffsetDateTime time) {
    public Stamp {
        Objects.requireNonNull(program, "program");
        Objects.requireNonNull(time, "time");
    }
}
