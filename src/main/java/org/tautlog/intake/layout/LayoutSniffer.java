package org.tautlog.intake.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tautlog.intake.text.Cells;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.NumberForm;
import org.tautlog.intake.text.Row;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Completes a layout by what a file shows. Everything that is taken for granted is returned as a problem of its own. */
public final class LayoutSniffer {
    /** Names of a column whose change begins the next trace, in lower case without signs. */
    private static final String TRACE_NAMES =
            " trace traceid traceno runid run cycle cycleno cycleid resultid recordid id vorgang vorgangnr zyklus kurve kurvennr ";

    private static final String TIME_OF_DAY_NAMES = " timeofday uhrzeit tageszeit ";

    private final LogLayout stated;
    private final String file;
    private final List<Line> head;
    private final List<Problem> assumed = new ArrayList<>();
    private StatedAbove above = new StatedAbove();

    private LayoutSniffer(LogLayout stated, String file, List<Line> head) {
        this.stated = stated;
        this.file = file;
        this.head = head;
    }

    /**
     * Completes a layout.
     *
     * @param stated what the layout states; {@link LogLayout#unstated()} where there is none
     * @param file the file's name for problems
     * @param head the file's first lines
     * @return the layout of the file with what was assumed, or why there is none
     */
    public static Outcome<FileLayout> complete(LogLayout stated, String file, List<Line> head) {
        var header = new HeaderSearch(stated).find(file, head);
        return header.value().isEmpty()
                ? Outcome.failed(header.problems())
                : new LayoutSniffer(stated, file, head).complete(header.value().orElseThrow());
    }

    private Outcome<FileLayout> complete(HeaderSearch.Header header) {
        above = StatedAbove.of(head, header.line());
        if (stated.text().delimiter() == null) {
            assume("delimiter", "cells are taken to be separated by " + spelt(header.delimiter()), "[text] delimiter");
        }
        var below = head.stream()
                .filter(line -> line.number() > header.line() && !line.isBlank() && !line.tooLong())
                .toList();
        var cutter = new Cells(header.delimiter());
        var units = below.isEmpty()
                ? List.<String>of()
                : unitsIn(cutter.of(below.get(0).text()), header);
        var samples = new EnumMap<SampleQuantity, SampleColumn>(SampleQuantity.class);
        for (var quantity : SampleQuantity.values()) {
            var problem = addSample(quantity, header, units, samples);
            if (problem.isPresent()) {
                return Outcome.failed(List.of(problem.get()));
            }
        }
        var rows = below.stream()
                .skip(units.isEmpty() ? 0 : 1)
                .<List<String>>map(line -> cutter.of(line.text()).orElseGet(Row::none))
                .filter(cells -> cells.size() == header.cells().size())
                .toList();
        var values =
                rows.stream().flatMap(row -> valuesOf(row, samples).stream()).toList();
        var numbers = numbers(values);
        char separator = stated.listSeparator().isEmpty()
                ? NumberSearch.listSeparator(values, numbers)
                : stated.listSeparator().charAt(0);
        var keys = keyColumns(header, rows);
        var shape = shape(separator, keys);
        header.identity().forEach((field, column) -> {
            if (!stated.identity().containsKey(field)) {
                assume(
                        field.key(),
                        field.key() + " is taken from column '" + header.cells().get(column) + "'",
                        "[identity] " + field.key());
            }
        });
        return Outcome.of(
                new FileLayout(
                        withZone(),
                        shape,
                        header.delimiter(),
                        numbers,
                        header.cells(),
                        header.line(),
                        units.isEmpty() ? 0 : below.get(0).number(),
                        samples,
                        header.identity(),
                        shape == LogShape.LONG_TABLE ? keys : List.of(),
                        timeOfDayColumn(header),
                        separator == 0 ? ' ' : separator),
                assumed);
    }

    private LogLayout withZone() {
        var zone = above.zone();
        return zone == null || stated.time().zone() != null ? stated : stated.withZone(zone);
    }

    private static List<String> valuesOf(List<String> row, Map<SampleQuantity, SampleColumn> samples) {
        return samples.entrySet().stream()
                .filter(entry -> entry.getKey() != SampleQuantity.STAGE
                        && entry.getValue().isColumn())
                .map(entry -> row.get(entry.getValue().column()))
                .toList();
    }

    /** The cells of a row that holds units and nothing else; empty where the row is another. */
    private static List<String> unitsIn(Optional<Row> row, HeaderSearch.Header header) {
        var cells = row.orElseGet(Row::none);
        return cells.size() == header.cells().size() && areUnits(cells) ? cells : List.of();
    }

    /**
     * Says whether a row holds units: some that are known, no more others, and no number.
     *
     * @param row the cells of a row
     * @return whether it is a row of units, as it stands under a header
     */
    public static boolean areUnits(List<String> row) {
        int known = 0;
        int others = 0;
        for (var cell : row) {
            var unit = unitIn(cell);
            if (ColumnName.isUnit(unit)) {
                known++;
            } else if (unit.chars().anyMatch(Character::isDigit)) {
                return false;
            } else if (!unit.isEmpty() && !unit.equals("-")) {
                others++;
            }
        }
        return known > 0 && others <= known;
    }

    /**
     * Says whether a line names the columns of a table, by the layout's names or the usual ones.
     *
     * @param stated what the layout states
     * @param line the line
     * @return whether it is a header that could stand above samples
     */
    public static boolean isHeader(LogLayout stated, Line line) {
        return Stream.of(stated, LogLayout.unstated())
                .anyMatch(layout ->
                        new HeaderSearch(layout).find("", List.of(line)).value().isPresent());
    }

    /**
     * Says whether a line above a table states the unit of one of its columns.
     *
     * @param key the line's key, such as {@code Torque unit}
     * @return whether its value is a unit
     */
    public static boolean namesUnit(String key) {
        return StatedAbove.unitOf(key).isPresent();
    }

    private static String unitIn(String cell) {
        boolean bracketed = cell.length() > 2
                && ((cell.startsWith("[") && cell.endsWith("]")) || (cell.startsWith("(") && cell.endsWith(")")));
        return bracketed ? cell.substring(1, cell.length() - 1).strip() : cell;
    }

    private Optional<Problem> addSample(
            SampleQuantity quantity,
            HeaderSearch.Header header,
            List<String> units,
            Map<SampleQuantity, SampleColumn> samples) {
        var source = stated.samples().get(quantity);
        Integer column = header.samples().get(quantity);
        if (column == null) {
            if (source != null && source.factor() != null) {
                samples.put(quantity, new SampleColumn(-1, source.factor() * source.sign(), source.step(), Map.of()));
            }
            return Optional.empty();
        }
        var name = header.cells().get(column);
        if (source == null) {
            assume(
                    quantity.key(),
                    quantity.key() + " is taken from column '" + name + "'",
                    "[samples] " + quantity.key());
        }
        var physical = quantity.quantity();
        if (physical.isEmpty()) {
            samples.put(quantity, new SampleColumn(column, 1.0, 0.0, source == null ? Map.of() : source.marks()));
            return Optional.empty();
        }
        int sign = source == null ? 1 : source.sign();
        if (source != null && source.factor() != null) {
            samples.put(quantity, new SampleColumn(column, source.factor() * sign, 0.0, Map.of()));
            return Optional.empty();
        }
        var unit = ColumnName.of(name).unit();
        if (unit.isEmpty() && !units.isEmpty()) {
            unit = unitIn(units.get(column));
        }
        var unitAbove = above.unit(quantity);
        if (unit.isEmpty()) {
            unit = unitAbove;
        } else if (!unitAbove.isEmpty()
                && !physical.get().factor(unit).equals(physical.get().factor(unitAbove))) {
            return Optional.of(new Problem(
                    ProblemCode.BAD_UNIT,
                    Where.line(file, header.line()).at(name),
                    "the column is in " + Words.quoted(unit) + ", a line above it says " + Words.quoted(unitAbove),
                    "one unit",
                    "state the right one in a layout.toml beside the file"));
        }
        if (unit.isEmpty()) {
            unit = quantity.usualUnit();
            assume(
                    quantity.key(),
                    "column '" + name + "' states no unit; its unit is taken to be " + unit,
                    "[samples] " + quantity.key());
        }
        var factor = physical.get().factor(unit);
        if (factor.isEmpty()) {
            return Optional.of(new Problem(
                    ProblemCode.BAD_UNIT,
                    Where.line(file, header.line()).at(name),
                    Words.quoted(unit) + " is no unit of " + physical.get().words(),
                    "one of " + String.join(", ", physical.get().symbols()),
                    "state the unit in a layout.toml beside the file"));
        }
        samples.put(quantity, new SampleColumn(column, factor.getAsDouble() * sign, 0.0, Map.of()));
        return Optional.empty();
    }

    private NumberForm numbers(List<String> values) {
        Character mark = stated.text().decimalMark();
        if (mark == null) {
            mark = NumberSearch.decimalMark(values);
            if (mark == ',') {
                assume("decimal-mark", "the decimal mark is taken to be ','", "[text] decimal-mark");
            }
        }
        return new NumberForm(mark, stated.text().thousands());
    }

    private LogShape shape(char separator, List<Integer> keys) {
        if (stated.shape() != null) {
            return stated.shape();
        }
        var shape = separator != 0
                ? LogShape.ROW_PER_TRACE
                : keys.isEmpty() ? LogShape.FILE_PER_TRACE : LogShape.LONG_TABLE;
        assume("shape", "the shape is taken to be " + shape.word(), "[log] shape");
        return shape;
    }

    private List<Integer> keyColumns(HeaderSearch.Header header, List<List<String>> rows) {
        var keys = new LinkedHashSet<Integer>();
        stated.traceKey().forEach(name -> keys.add(HeaderSearch.named(header.cells(), name)));
        if (!keys.isEmpty()) {
            return List.copyOf(keys);
        }
        int trace = HeaderSearch.first(
                header.cells(), cell -> TRACE_NAMES.contains(' ' + ColumnName.plain(cell) + ' ') && !cell.isBlank());
        if (trace >= 0 && !header.samples().containsValue(trace)) {
            keys.add(trace);
        }
        int timeOfDay = timeOfDayColumn(header);
        Integer time = header.identity().get(IdentityField.TIME);
        header.identity().forEach((field, column) -> {
            if (field != IdentityField.TIME) {
                keys.add(column);
            }
        });
        if (time != null && !changesWithEachSample(time, keys, rows)) {
            keys.add(time);
        }
        if (timeOfDay >= 0 && !changesWithEachSample(timeOfDay, keys, rows)) {
            keys.add(timeOfDay);
        }
        return List.copyOf(keys);
    }

    private static int timeOfDayColumn(HeaderSearch.Header header) {
        int column = HeaderSearch.first(
                header.cells(), cell -> TIME_OF_DAY_NAMES.contains(' ' + ColumnName.plain(cell) + ' '));
        return header.identity().containsKey(IdentityField.TIME) ? column : -1;
    }

    /** A time column may hold the moment of each sample instead of the moment of the tightening. */
    private static boolean changesWithEachSample(int time, Iterable<Integer> keys, List<List<String>> rows) {
        int changes = 0;
        int pairs = 0;
        for (int i = 1; i < rows.size(); i++) {
            boolean sameTrace = true;
            for (int key : keys) {
                sameTrace &= rows.get(i).get(key).equals(rows.get(i - 1).get(key));
            }
            if (sameTrace) {
                pairs++;
                changes += rows.get(i).get(time).equals(rows.get(i - 1).get(time)) ? 0 : 1;
            }
        }
        return changes > pairs / 2;
    }

    private void assume(String key, String what, String stateIt) {
        assumed.add(new Problem(
                ProblemCode.ASSUMED, Where.file(file).at(key), what, "", "state it in layout.toml under " + stateIt));
    }

    private static String spelt(char delimiter) {
        return delimiter == Cells.BLANKS ? "blanks" : delimiter == '\t' ? "tab" : "'" + delimiter + "'";
    }
}
