package org.tautlog.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.Stream;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** A shift as a table: one row a tightening in reading order, one column a feature; missing features are missing cells. */
final class ShiftFrame {
    private static final String STATION = "station";
    private static final String SPINDLE = "spindle";
    private static final String ATTEMPT = "attempt";
    private static final String VERDICT = "verdict";

    private final Table table;

    private ShiftFrame(Table table) {
        this.table = table;
    }

    static ShiftFrame of(List<Judgement> judgements) {
        var table = Table.create(
                "shift",
                StringColumn.create(STATION),
                StringColumn.create(SPINDLE),
                IntColumn.create(ATTEMPT),
                StringColumn.create(VERDICT));
        for (var feature : ChartedFeature.values()) {
            table.addColumns(DoubleColumn.create(column(feature)));
        }
        for (var judgement : judgements) {
            var identity = judgement.identity();
            table.stringColumn(STATION).append(identity.station());
            table.stringColumn(SPINDLE).append(identity.spindle());
            table.intColumn(ATTEMPT).append(identity.attempt());
            table.stringColumn(VERDICT).append(judgement.verdict().name());
            for (var feature : ChartedFeature.values()) {
                var value = feature.of(judgement.signature()).value();
                var cells = table.doubleColumn(column(feature));
                if (value.isPresent()) {
                    cells.append(value.getAsDouble());
                } else {
                    cells.appendMissing();
                }
            }
        }
        return new ShiftFrame(table);
    }

    List<StreamSummary> summaries() {
        var byStream = new TreeMap<Stream, StreamSummary>();
        if (table.isEmpty()) {
            return List.of();
        }
        for (var slice : table.splitOn(STATION, SPINDLE)) {
            var rows = slice.asTable();
            var stream = new Stream(
                    rows.stringColumn(STATION).get(0),
                    rows.stringColumn(SPINDLE).get(0));
            byStream.put(stream, summary(stream, rows));
        }
        return new ArrayList<>(byStream.values());
    }

    private static StreamSummary summary(Stream stream, Table rows) {
        var verdicts = rows.stringColumn(VERDICT);
        var first = rows.where(rows.intColumn(ATTEMPT).isEqualTo(1));
        return new StreamSummary(
                stream,
                new VerdictCounts(
                        count(verdicts, Verdict.CONFORMING),
                        count(verdicts, Verdict.REVIEW),
                        count(verdicts, Verdict.UNJUDGED),
                        count(verdicts, Verdict.NONCONFORMING)),
                new FirstPass(count(first.stringColumn(VERDICT), Verdict.CONFORMING), first.rowCount()),
                median(first, ChartedFeature.FINAL_TORQUE),
                median(first, ChartedFeature.TORQUE_RATE),
                median(first, ChartedFeature.TURN));
    }

    private static int count(StringColumn verdicts, Verdict verdict) {
        return verdicts.isEqualTo(verdict.name()).size();
    }

    private static @Nullable Double median(Table rows, ChartedFeature feature) {
        var found = rows.doubleColumn(column(feature)).removeMissing();
        return found.isEmpty() ? null : (Double) found.median();
    }

    private static String column(ChartedFeature feature) {
        return feature.name().toLowerCase(Locale.ROOT);
    }
}
