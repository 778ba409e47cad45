package org.tautlog.intake.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.MeasuredElongation;

/**
 * Clamp loads or elongations measured on qualification bolts, one row an angle: {@value #SERIAL}, {@value #BOLT}, {@value
 * #ATTEMPT} (1 where there is no such column or cell), {@value #ANGLE} on the axis of the recording, and {@value #LOAD} or, where
 * there is no such column, {@value #ELONGATION}. Rows may stand in any order.
 *
 * @param measured clamp loads, one list for each serial, bolt and attempt, in the file's order; empty where elongation stands
 * @param elongations elongations likewise; empty where clamp load stands
 * @param rows how many rows the file has below its headings
 * @param rejected how many of them could not be used
 * @param problems the first of those, each with its line and reason
 */
public record OutcomeFile(
        List<MeasuredClampLoad> measured,
        List<MeasuredElongation> elongations,
        int rows,
        int rejected,
        List<Problem> problems) {
    /** Heading of the serial. */
    public static final String SERIAL = "serial";
    /** Heading of the bolt position. */
    public static final String BOLT = "bolt";
    /** Heading of the attempt. */
    public static final String ATTEMPT = "attempt";
    /** Heading of the angle. */
    public static final String ANGLE = "angle-deg";
    /** Heading of the clamp load. */
    public static final String LOAD = "clamp-load-kN";

    /** Heading of the bolt's elongation. */
    public static final String ELONGATION = "elongation-um";

    public OutcomeFile {
        measured = List.copyOf(measured);
        elongations = List.copyOf(elongations);
        problems = List.copyOf(problems);
    }

    /**
     * Reads such a file.
     *
     * @param file the file
     * @return what it holds, or why it cannot be used
     * @throws IOException where the file cannot be read on
     */
    public static Outcome<OutcomeFile> read(Path file) throws IOException {
        var there = CsvScan.headings(file, List.of(SERIAL, BOLT, ANGLE)).value().orElse(List.of());
        var outcome = !there.contains(LOAD) && there.contains(ELONGATION) ? ELONGATION : LOAD;
        var texts = there.contains(ATTEMPT) ? List.of(SERIAL, BOLT, ATTEMPT) : List.of(SERIAL, BOLT);
        var read = CsvColumns.read(file, List.of(ANGLE, outcome), texts, CsvColumns.MOST_ROWS);
        return read.value()
                .map(columns -> Outcome.of(new Gathering(Where.file(file.toString())).of(columns, outcome), List.of()))
                .orElseGet(() -> Outcome.failed(read.problems()));
    }

    /** The rows of one file as they come. */
    private static final class Gathering {
        private record Key(String serial, String bolt, int attempt) {}

        private final Where where;
        private final Map<Key, TreeMap<Double, Double>> values = new LinkedHashMap<>();
        private final List<Problem> problems = new ArrayList<>();
        private int rejected;

        Gathering(Where where) {
            this.where = where;
        }

        OutcomeFile of(CsvColumns columns, String outcome) {
            problems.addAll(columns.problems());
            columns.rows().forEach(this::take);
            boolean elongation = outcome.equals(ELONGATION);
            return new OutcomeFile(
                    elongation ? List.of() : each(Gathering::load),
                    elongation ? each(Gathering::elongation) : List.of(),
                    columns.rows().size() + columns.rejected(),
                    columns.rejected() + rejected,
                    problems);
        }

        private <T> List<T> each(BiFunction<Key, Map<Double, Double>, T> one) {
            return values.entrySet().stream()
                    .map(entry -> one.apply(entry.getKey(), entry.getValue()))
                    .toList();
        }

        private static MeasuredClampLoad load(Key key, Map<Double, Double> loads) {
            return new MeasuredClampLoad(
                    key.serial,
                    key.bolt,
                    key.attempt,
                    loads.entrySet().stream()
                            .map(point -> new MeasuredClampLoad.Point(point.getKey(), point.getValue()))
                            .toList());
        }

        private static MeasuredElongation elongation(Key key, Map<Double, Double> lengths) {
            return new MeasuredElongation(
                    key.serial,
                    key.bolt,
                    key.attempt,
                    lengths.entrySet().stream()
                            .map(point -> new MeasuredElongation.Point(point.getKey(), point.getValue()))
                            .toList());
        }

        private void take(CsvRow row) {
            var serial = row.texts().get(0);
            if (serial.isBlank()) {
                reject(row, SERIAL, "the cell is empty");
                return;
            }
            int attempt = row.texts().size() > 2 ? attempt(row.texts().get(2)) : 1;
            if (attempt < 1) {
                reject(row, ATTEMPT, Words.quoted(row.texts().get(2)) + " is no attempt; attempts count from 1");
                return;
            }
            var known = values.computeIfAbsent(new Key(serial, row.texts().get(1), attempt), key -> new TreeMap<>());
            if (known.putIfAbsent(row.numbers().get(0), row.numbers().get(1)) != null) {
                reject(row, ANGLE, "the same angle was measured before on this bolt");
            }
        }

        private static int attempt(String cell) {
            if (cell.isBlank()) {
                return 1;
            }
            try {
                return Integer.parseInt(cell.strip());
            } catch (NumberFormatException e) {
                return 0;
            }
        }

        private void reject(CsvRow row, String column, String what) {
            rejected++;
            if (problems.size() < CsvScan.MOST_PROBLEMS) {
                problems.add(new Problem(
                        ProblemCode.BAD_ROW,
                        Where.line(where.file(), row.line()).at(column),
                        what,
                        "",
                        ""));
            }
        }
    }
}
