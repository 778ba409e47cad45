package org.tautlog.report;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Times as they are written: the offset that the plant recorded is kept. */
final class Times {
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private Times() {}

    /** For programs: ISO 8601 with seconds and offset. */
    static String iso(OffsetDateTime time) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
    }

    /** For readers: date, hour and minute. */
    static String minutes(OffsetDateTime time) {
        return MINUTES.format(time);
    }

    /** For readers, where the date is known: hour and minute. */
    static String clock(OffsetDateTime time) {
        return CLOCK.format(time);
    }

    /** For readers: from when to when, the day once where it is the same. */
    static String span(@Nullable OffsetDateTime first, @Nullable OffsetDateTime last) {
        if (first == null || last == null) {
            return "times not exported";
        }
        boolean oneDay = first.toLocalDate().equals(last.toLocalDate());
        return minutes(first) + " to " + (oneDay ? clock(last) : minutes(last));
    }
}
