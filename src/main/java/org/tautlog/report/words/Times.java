package org.tautlog.report.words;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Times as they are written: the offset that the plant recorded is kept. */
public final class Times {
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private Times() {}

    /**
     * {@return a time for programs: ISO 8601 with seconds and offset}
     *
     * @param time the time
     */
    public static String iso(OffsetDateTime time) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
    }

    /**
     * {@return a time for readers: date, hour and minute}
     *
     * @param time the time
     */
    public static String minutes(OffsetDateTime time) {
        return MINUTES.format(time);
    }

    /** For readers, where the date is known: hour and minute. */
    static String clock(OffsetDateTime time) {
        return CLOCK.format(time);
    }

    /**
     * {@return from when to when, for readers: the day once where it is the same}
     *
     * @param first the earlier time; null where it is not known
     * @param last the later time; null where it is not known
     */
    public static String span(@Nullable OffsetDateTime first, @Nullable OffsetDateTime last) {
        if (first == null || last == null) {
            return "times not exported";
        }
        boolean oneDay = first.toLocalDate().equals(last.toLocalDate());
        return minutes(first) + " to " + (oneDay ? clock(last) : minutes(last));
    }
}
