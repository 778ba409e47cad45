package org.tautlog.archive.table;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/** What a tightening is of and where it was read: the same columns in traces and judgements. */
public final class IdentityColumns {
    private static final int LATEST_YEAR = 9999;

    private IdentityColumns() {}

    static <T> List<Column<T>> of(Function<T, TraceIdentity> identity, Function<T, Source> source) {
        return List.of(
                Column.text("serial", row -> identity.apply(row).serial()),
                Column.text("station", row -> identity.apply(row).station()),
                Column.text("spindle", row -> identity.apply(row).spindle()),
                Column.text("bolt", row -> identity.apply(row).bolt()),
                Column.whole("attempt", row -> identity.apply(row).attempt()),
                Column.text("recorded_time", row -> text(identity.apply(row).time())),
                new Column<>(
                        "time_utc",
                        ColumnType.MOMENT,
                        row -> timeUtc(identity.apply(row)).orElse(null)),
                Column.text("bolt_lot", row -> identity.apply(row).boltLot()),
                Column.text("source_file", row -> source.apply(row).file()),
                Column.whole("source_line", row -> source.apply(row).line()),
                Column.text("source_sha256", row -> source.apply(row).sha256()));
    }

    static TraceIdentity identity(Row row) {
        var time = row.text("recorded_time");
        return new TraceIdentity(
                row.text("serial"),
                row.text("station"),
                row.text("spindle"),
                row.text("bolt"),
                row.whole("attempt"),
                time.isEmpty() ? null : OffsetDateTime.parse(time),
                row.text("bolt_lot"));
    }

    static Source source(Row row) {
        return new Source(row.text("source_file"), row.whole("source_line"), row.text("source_sha256"));
    }

    private static @Nullable String text(@Nullable OffsetDateTime time) {
        return time == null ? null : time.toString();
    }

    /**
     * The moment by which a tightening is found.
     *
     * @param identity whose it is
     * @return its time in UTC to the microsecond; empty without one, and where it lies beyond what every reader of Parquet
     *     holds, so that it stays in its text alone
     */
    public static Optional<LocalDateTime> timeUtc(TraceIdentity identity) {
        var time = identity.time();
        return time == null || time.getYear() < 1 || time.getYear() >= LATEST_YEAR
                ? Optional.empty()
                : Optional.of(time.withOffsetSameInstant(ZoneOffset.UTC)
                        .toLocalDateTime()
                        .truncatedTo(ChronoUnit.MICROS));
    }
}
