package org.tautlog.archive.ledger;

import java.time.OffsetDateTime;
import java.util.Objects;

/**
 * One link of the chain.
 *
 * @param number 1, 2, ... without gaps
 * @param previous hash of the entry before, in lower-case hex; 64 zeros for the first
 * @param time when it was written, as the writer's clock said
 * @param event what it records
 * @param sha256 its own hash, in lower-case hex
 */
public record LedgerEntry(int number, String previous, OffsetDateTime time, LedgerEvent event, String sha256) {
    /** What the first entry names as the one before it. */
    static final String NOTHING_BEFORE = "0".repeat(64);

    public LedgerEntry {
        if (number < 1) {
            throw new IllegalArgumentException("number is " + number + "; entries count from 1");
        }
        Objects.requireNonNull(previous, "previous");
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(event, "event");
        Objects.requireNonNull(sha256, "sha256");
    }
}
