package org.tautlog.intake.calendar;

import java.time.OffsetDateTime;
import java.util.Objects;

/**
 * A shift of one day as a stretch of time.
 *
 * @param from when it begins
 * @param before when it ends; that moment is outside
 */
public record ShiftSpan(OffsetDateTime from, OffsetDateTime before) {
    public ShiftSpan {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(before, "before");
        if (before.isBefore(from)) {
            throw new IllegalArgumentException("before is " + before + "; a shift ends after its beginning, " + from);
        }
    }
}
