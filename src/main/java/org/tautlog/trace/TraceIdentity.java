package org.tautlog.trace;

import java.time.OffsetDateTime;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a recording says it is of: one attempt to tighten one bolt.
 *
 * @param serial identifier of the engine; never blank, leading zeros kept
 * @param station where it was tightened; empty where the export does not say
 * @param spindle which of the station's tools; empty where the export does not say
 * @param bolt the bolt position in the engine, normally 1..n as text; empty where the export does not say
 * @param attempt 1, 2, ... for the same bolt position of the same engine
 * @param time when the tightening ended or was recorded; null where the export does not say
 * @param boltLot the supplier's heat or batch mark; empty where the export does not say
 */
public record TraceIdentity(
        String serial,
        String station,
        String spindle,
        String bolt,
        int attempt,
        @Nullable OffsetDateTime time,
        String boltLot) {
    public TraceIdentity {
        if (serial.isBlank()) {
            throw new IllegalArgumentException("serial is blank; a tightening must name its engine");
        }
        Objects.requireNonNull(station, "station");
        Objects.requireNonNull(spindle, "spindle");
        Objects.requireNonNull(bolt, "bolt");
        Objects.requireNonNull(boltLot, "boltLot");
        if (attempt < 1) {
            throw new IllegalArgumentException("attempt is " + attempt + "; attempts count from 1");
        }
    }

    /** {@return the tightening in words: {@code FW-000017 bolt 3, S40/2, attempt 1}} */
    public String words() {
        var text = new StringBuilder(serial);
        if (!bolt.isEmpty()) {
            text.append(" bolt ").append(bolt);
        }
        if (!station.isEmpty() || !spindle.isEmpty()) {
            text.append(", ").append(station).append('/').append(spindle);
        }
        if (attempt > 1) {
            text.append(", attempt ").append(attempt);
        }
        return text.toString();
    }
}
