package org.tautlog.archive;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.table.IdentityColumns;
import org.tautlog.judge.BriefJudgement;

/** A condition on rows: SQL with its values apart, and which files cannot hold any such row. */
final class Condition {
    private final List<String> terms = new ArrayList<>();
    private final List<Object> values = new ArrayList<>();
    private Predicate<Manifest.DataFile> mayHold = file -> true;

    Condition is(String column, String value) {
        if (column.equals("serial")) {
            mayHold = mayHold.and(file -> mayHoldSerial(file, value));
        }
        return term(column + " = ?", value);
    }

    /**
     * The recordings that judgements are of: times and serials say where to look, places in the exports which they are. One
     * list of lines for each export is found in a tenth of the time that pairs take.
     */
    Condition ofRecordings(Collection<BriefJudgement> judgements) {
        var serials = new TreeSet<>(Condition::compare);
        var lines = new TreeMap<String, SortedSet<Integer>>();
        var times = new TreeSet<LocalDateTime>();
        boolean allTimed = true;
        for (var one : judgements) {
            serials.add(one.identity().serial());
            lines.computeIfAbsent(one.source().sha256(), export -> new TreeSet<>())
                    .add(one.source().line());
            var time = IdentityColumns.timeUtc(one.identity());
            time.ifPresent(times::add);
            allTimed &= time.isPresent();
        }
        if (allTimed) {
            fromUtc(times.first()).untilUtc(times.last());
        }
        mayHold = mayHold.and(file -> mayHoldAnyOf(file, serials));
        isAnyOf("serial", serials);
        var exports = new ArrayList<String>();
        lines.forEach((export, itsLines) -> {
            exports.add("(source_sha256 = ? AND source_line IN (" + places(itsLines.size(), "?") + "))");
            values.add(export);
            values.addAll(itsLines);
        });
        terms.add("(" + String.join(" OR ", exports) + ")");
        return this;
    }

    Condition isAnyOf(String column, Collection<String> wanted) {
        terms.add(column + " IN (" + places(wanted.size(), "?") + ")");
        values.addAll(wanted);
        return this;
    }

    /** Rows whose list in the column has the value. */
    Condition holds(String column, String value) {
        return term("list_contains(" + column + ", ?)", value);
    }

    /** Rows of a range of time, its ends included, and all that have none. */
    Condition timelessOr(@Nullable OffsetDateTime earliest, @Nullable OffsetDateTime latest) {
        var range = new ArrayList<String>();
        if (earliest != null) {
            range.add("time_utc >= ?");
            values.add(utc(earliest));
        }
        if (latest != null) {
            range.add("time_utc <= ?");
            values.add(utc(latest));
        }
        if (!range.isEmpty()) {
            terms.add("(time_utc IS NULL OR (" + String.join(" AND ", range) + "))");
        }
        return this;
    }

    Condition isIfGiven(String column, String value) {
        return value.isEmpty() ? this : is(column, value);
    }

    Condition from(@Nullable OffsetDateTime earliest) {
        return earliest == null ? this : fromUtc(utc(earliest));
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

    private Condition fromUtc(LocalDateTime earliest) {
        mayHold = mayHold.and(
                file -> hasTimes(file) && !LocalDateTime.parse(file.lastTime()).isBefore(earliest));
        return term("time_utc >= ?", earliest);
    }

    private Condition untilUtc(LocalDateTime latest) {
        mayHold = mayHold.and(
                file -> hasTimes(file) && !LocalDateTime.parse(file.firstTime()).isAfter(latest));
        return term("time_utc <= ?", latest);
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

    private static String places(int count, String one) {
        return String.join(", ", Collections.nCopies(count, one));
    }

    private static boolean mayHoldSerial(Manifest.DataFile file, String serial) {
        return file.firstSerial().isEmpty()
                || (compare(file.firstSerial(), serial) <= 0 && compare(file.lastSerial(), serial) >= 0);
    }

    private static boolean mayHoldAnyOf(Manifest.DataFile file, NavigableSet<String> serials) {
        if (file.firstSerial().isEmpty()) {
            return true;
        }
        var next = serials.ceiling(file.firstSerial());
        return next != null && compare(next, file.lastSerial()) <= 0;
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
