package org.tautlog.report.words;

import java.time.Duration;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.tautlog.review.ShiftReview;
import org.tautlog.trace.TraceIdentity;

/**
 * Times within a shift, as its reader needs them.
 *
 * @param dated whether hour and minute alone would leave the day open
 */
public record ShiftClock(boolean dated) {
    private static final Duration LONGEST_BY_THE_CLOCK = Duration.ofHours(24);

    /**
     * {@return the clock of a shift: with the day where it lasts a day or longer}
     *
     * @param review the shift
     */
    public static ShiftClock of(ShiftReview review) {
        var first = review.first();
        var last = review.last();
        return new ShiftClock(
                first != null && last != null && Duration.between(first, last).compareTo(LONGEST_BY_THE_CLOCK) >= 0);
    }

    /**
     * {@return a time as this shift needs it, a dash where there is none}
     *
     * @param time the time; null where it is not known
     */
    public String words(@Nullable OffsetDateTime time) {
        return time == null ? "–" : dated ? Times.minutes(time) : Times.clock(time);
    }

    /**
     * {@return the engine and when it was there; its serial alone where there is no time}
     *
     * @param identity one tightening of the engine
     */
    public String words(TraceIdentity identity) {
        return identity.serial() + (identity.time() == null ? "" : ", " + words(identity.time()));
    }
}
