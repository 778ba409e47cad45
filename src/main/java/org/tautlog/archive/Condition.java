package org.tautlog.archive;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** A condition on rows: SQL with its values apart, and which files cannot hold any such row. */
final class Condition {
    private final List<String> terms = new ArrayList<>();
    private final List<Object> values = new ArrayList<>();
    private Predicate<Manifest.DataFile> mayHold = file -> true;

    Condition is(String column, String value) {
        if (column.equals("serial")) {
            mayHold = mayHold.and(file -> file.firstSerial().isEmpty()
                    || (compare(file.firstSerial(), value) <= 0 && compare(file.lastSerial(), value) >= 0));
        }
        return term(column + " = ?", value);
    }

    Condition isIfGiven(String column, String value) {
        return value.isEmpty() ? this : is(column, value);
    }

    Condition from(@Nullable OffsetDateTime earliest) {
        if (earliest == null) {
            return this;
        }
        return fromUtc(Optional.of(utc(earliest)));
    }

    Condition fromUtc(Optional<LocalDateTime> earliest) {
        if (earliest.isEmpty()) {
            return this;
        }
        var utc = earliest.get();
        mayHold = mayHold.and(
                file -> hasTimes(file) && !LocalDateTime.parse(file.lastTime()).isBefore(utc));
        return term("time_utc >= ?", utc);
    }

    Condition untilUtc(Optional<LocalDateTime> latest) {
        if (latest.isEmpty()) {
            return this;
        }
        var utc = latest.get();
        mayHold = mayHold.and(
                file -> hasTimes(file) && !LocalDateTime.parse(file.firstTime()).isAfter(utc));
        return term("time_utc <= ?", utc);
    }

    Condition before(@Nullable OffsetDateTime tooLate) {
        if (tooLate == null) {
            return this;
        }
        var utc = utc(tooLate);
        mayHold = mayHold.and(
                file -> hasTimes(file) && LocalDateTime.parse(file.firstTime()).isBefore(utc));
        return term("time_utc < ?", utc);
    }

    boolean mayBeIn(Manifest.DataFile file) {
        return mayHold.test(file);
    }

    String sql() {
        return terms.isEmpty() ? "" : " WHERE " + String.join(" AND ", terms);
    }

    List<Object> values() {
        return List.copyOf(values);
    }

    private Condition term(String sql, Object value) {
        terms.add(sql);
        values.add(value);
        return this;
    }

    private static boolean hasTimes(Manifest.DataFile file) {
        return !file.firstTime().isEmpty();
    }

    /** The store orders text by its bytes in UTF-8, which is the order of code points and not that of Java's chars. */
    private static int compare(String a, String b) {
        return Arrays.compareUnsigned(a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
    }

    private static LocalDateTime utc(OffsetDateTime time) {
        return time.withOffsetSameInstant(ZoneOffset.UTC).toLocalDateTime().truncatedTo(ChronoUnit.MICROS);
    }
}
