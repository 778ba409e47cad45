package org.tautlog.review.stream;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Sample;
import org.tautlog.trace.TraceIdentity;

/**
 * One feature of a station by engine and spindle: what the spindles did to one engine stands in one row. Where a spindle
 * tightens several bolt positions, each position's own level is taken out first. Empty cells hold NaN.
 */
final class StationTable {
    private static final int ENOUGH_OF_A_POSITION = 5;

    private record Key(String serial, int turn) {}

    private record Cell(int row, int column, double value, TraceIdentity tightening) {}

    private final List<StreamChart> charts;
    private final double[][] cells;
    private final Map<Integer, List<Cell>> byColumn = new HashMap<>();

    private StationTable(List<StreamChart> charts, int rows) {
        this.charts = charts;
        this.cells = new double[rows][charts.size()];
        Arrays.stream(cells).forEach(row -> Arrays.fill(row, Double.NaN));
    }

    /** A table of the charts of one feature and one station, in the streams' order. */
    static StationTable of(List<StreamChart> charts) {
        record Entry(Key key, int column, double value, TraceIdentity tightening) {}
        var entries = new ArrayList<Entry>();
        for (int j = 0; j < charts.size(); j++) {
            var chart = charts.get(j);
            var levelled = levelled(chart);
            var turns = new HashMap<String, Integer>();
            for (int i = 0; i < levelled.length; i++) {
                var tightening = chart.tightenings().get(i);
                int turn = turns.merge(tightening.serial(), 1, Integer::sum);
                entries.add(new Entry(new Key(tightening.serial(), turn), j, levelled[i], tightening));
            }
        }
        entries.sort(Comparator.comparing(entry -> when(entry.tightening())));
        var rows = new LinkedHashMap<Key, Integer>();
        entries.forEach(entry -> rows.putIfAbsent(entry.key(), rows.size()));
        var table = new StationTable(charts, rows.size());
        for (var entry : entries) {
            int row = rows.getOrDefault(entry.key(), 0);
            table.cells[row][entry.column()] = entry.value();
            table.byColumn
                    .computeIfAbsent(entry.column(), unused -> new ArrayList<>())
                    .add(new Cell(row, entry.column(), entry.value(), entry.tightening()));
        }
        table.byColumn.values().forEach(column -> column.sort(Comparator.comparingInt(Cell::row)));
        return table;
    }

    List<Stream> streams() {
        return charts.stream().map(StreamChart::stream).toList();
    }

    double[][] cells() {
        return Arrays.stream(cells).map(double[]::clone).toArray(double[][]::new);
    }

    /** What one stream did apart from the others, engine by engine. */
    record Differences(List<TraceIdentity> tightenings, List<Double> values) {}

    /**
     * Each value of a stream less its own median, less the median of what the others did on that engine less theirs, with
     * the steps of streams that are already known to have moved taken out.
     */
    Differences differences(int stream, Map<Integer, Step> known) {
        var levels = new double[charts.size()];
        for (int j = 0; j < levels.length; j++) {
            levels[j] = median(column(j, known));
        }
        var tightenings = new ArrayList<TraceIdentity>();
        var values = new ArrayList<Double>();
        for (var cell : byColumn.getOrDefault(stream, List.of())) {
            int row = cell.row();
            var others = new ArrayList<Double>();
            for (int j = 0; j < levels.length; j++) {
                if (j != stream && !Double.isNaN(cells[row][j])) {
                    others.add(cells[row][j] - step(row, known.get(j)) - levels[j]);
                }
            }
            if (!others.isEmpty()) {
                tightenings.add(cell.tightening());
                values.add(cell.value() - levels[stream] - median(others));
            }
        }
        return new Differences(tightenings, values);
    }

    /** A step of a stream's level from a row on. */
    record Step(int row, double size) {}

    Step step(int stream, TraceIdentity first, double size) {
        return byColumn.getOrDefault(stream, List.of()).stream()
                .filter(cell -> cell.tightening().equals(first))
                .findFirst()
                .map(cell -> new Step(cell.row(), size))
                .orElseThrow();
    }

    private List<Double> column(int stream, Map<Integer, Step> known) {
        return byColumn.getOrDefault(stream, List.of()).stream()
                .map(cell -> cell.value() - step(cell.row(), known.get(stream)))
                .toList();
    }

    private static double step(int row, @Nullable Step step) {
        return step != null && row >= step.row() ? step.size() : 0;
    }

    private static double[] levelled(StreamChart chart) {
        var values = chart.numbers();
        var positions = new HashMap<String, List<Double>>();
        for (int i = 0; i < values.length; i++) {
            positions
                    .computeIfAbsent(chart.tightenings().get(i).bolt(), unused -> new ArrayList<>())
                    .add(values[i]);
        }
        if (positions.size() < 2) {
            return values;
        }
        double level = median(chart.values());
        for (int i = 0; i < values.length; i++) {
            var own = positions.getOrDefault(chart.tightenings().get(i).bolt(), List.of());
            values[i] -= own.size() < ENOUGH_OF_A_POSITION ? 0 : median(own) - level;
        }
        return values;
    }

    private static double median(List<Double> values) {
        var numbers = values.stream().mapToDouble(Double::doubleValue).toArray();
        return Sample.of(numbers, 1, "a median").found().map(Sample::median).orElse(0.0);
    }

    private static Instant when(TraceIdentity tightening) {
        var time = tightening.time();
        return time == null ? Instant.MAX : time.toInstant();
    }
}
