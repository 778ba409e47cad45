package org.tautlog.intake.layout;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import org.jspecify.annotations.Nullable;

/**
 * How recording times are written.
 *
 * @param format the format; null where the usual ones are tried (ISO 8601, then day.month.year)
 * @param zone the zone of times that carry none; null where none is stated
 */
public record TimeForm(
        @Nullable DateTimeFormatter format, @Nullable ZoneId zone) {}
