package org.tautlog.intake.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tautlog.intake.text.Cells;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.NumberForm;
import org.tautlog.intake.text.Row;

/**
 * A guess at the columns of a table whose names say nothing, from the numbers alone: what rises from row to row is the
 * angle, or in even steps the time; what ends near its highest is the torque. Only for a proposal that a person looks at.
 *
 * @param layout a layout that states the guess and nothing else
 * @param reasons why, by key of the layout file
 */
public record ColumnGuess(LogLayout layout, Map<String, String> reasons) {
    private static final List<Character> DELIMITERS = List.of(';', '\t', ',', '|', Cells.BLANKS);
    private static final int FEWEST_ROWS = 8;
    private static final double MOSTLY = 0.9;
    private static final double EVEN = 1e-3;

    public ColumnGuess {
        reasons = Map.copyOf(reasons);
    }

    /**
     * Guesses.
     *
     * @param head the file's first lines
     * @return the guess, or empty where no table of numbers under a line of names has a column that rises and another
     */
    public static Optional<ColumnGuess> of(List<Line> head) {
        for (var delimiter : DELIMITERS) {
            var cutter = new Cells(delimiter);
            var lines = head.stream()
                    .filter(line -> !line.isBlank() && !line.tooLong())
                    .<List<String>>map(line -> cutter.of(line.text()).orElseGet(Row::none))
                    .toList();
            for (int i = 0; i + FEWEST_ROWS < lines.size(); i++) {
                var found = under(lines, i, delimiter);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Guesses among columns of numbers.
     *
     * @param columns the numbers by the name of their column
     * @return the guess, or empty where no column rises or no other ends near its highest
     */
    public static Optional<ColumnGuess> among(Map<String, double[]> columns) {
        var found = new ArrayList<Column>();
        columns.forEach((name, values) -> {
            if (values.length >= FEWEST_ROWS) {
                found.add(Column.of(name, values));
            }
        });
        return choose(found, ',');
    }

    private static Optional<ColumnGuess> under(List<List<String>> lines, int header, char delimiter) {
        var names = lines.get(header);
        if (names.size() < 2 || names.stream().distinct().count() < names.size() || !areNames(names)) {
            return Optional.empty();
        }
        int first = header + (LayoutSniffer.areUnits(lines.get(header + 1)) ? 2 : 1);
        var rows = lines.subList(first, lines.size()).stream()
                .takeWhile(row -> row.size() == names.size())
                .toList();
        var cells = rows.stream().flatMap(List::stream).toList();
        var numbers = new NumberForm(NumberSearch.decimalMark(cells), false);
        var columns = new ArrayList<Column>();
        for (int i = 0; i < names.size() && rows.size() >= FEWEST_ROWS; i++) {
            int column = i;
            var values = rows.stream()
                    .map(row -> numbers.parse(row.get(column)))
                    .takeWhile(value -> value.isPresent())
                    .mapToDouble(value -> value.getAsDouble())
                    .toArray();
            if (values.length == rows.size()
                    && IdentityField.named(names.get(column)).isEmpty()) {
                columns.add(Column.of(names.get(i), values));
            }
        }
        return choose(columns, delimiter);
    }

    private static boolean areNames(List<String> cells) {
        return cells.stream()
                .allMatch(cell -> !cell.isEmpty() && cell.codePoints().anyMatch(Character::isLetter));
    }

    private static Optional<ColumnGuess> choose(List<Column> columns, char delimiter) {
        var rising = columns.stream().filter(Column::rises).toList();
        var uneven = rising.stream().filter(column -> !column.even()).findFirst();
        var angle = uneven.or(() -> rising.stream().reduce((a, b) -> a.span() > b.span() ? a : b));
        if (angle.isEmpty()) {
            return Optional.empty();
        }
        var torque = columns.stream()
                .filter(column ->
                        !column.equals(angle.get()) && column.endsHigh() && !(column.rises() && column.even()))
                .reduce((a, b) -> a.span() > b.span() ? a : b);
        if (torque.isEmpty()) {
            return Optional.empty();
        }
        var samples = new EnumMap<SampleQuantity, SampleSource>(SampleQuantity.class);
        var reasons = new HashMap<String, String>();
        state(SampleQuantity.ANGLE, angle.get(), "guessed: it rises from row to row", samples, reasons);
        state(SampleQuantity.TORQUE, torque.get(), "guessed: it ends near its highest", samples, reasons);
        var stated = LogLayout.unstated();
        var text = new TextForm(null, delimiter, null, false, stated.text().comment());
        return Optional.of(new ColumnGuess(
                new LogLayout(text, null, Map.of(), null, stated.time(), samples, "", List.of(), List.of(), null),
                reasons));
    }

    private static void state(
            SampleQuantity quantity,
            Column column,
            String reason,
            Map<SampleQuantity, SampleSource> samples,
            Map<String, String> reasons) {
        var unit = ColumnName.of(column.name()).unit();
        var factor = quantity.quantity().orElseThrow().factor(unit.isEmpty() ? quantity.usualUnit() : unit);
        samples.put(
                quantity,
                new SampleSource(column.name(), factor.isPresent() ? factor.getAsDouble() : 1.0, 1, 0.0, Map.of()));
        reasons.put(
                quantity.key(),
                factor.isEmpty()
                        ? reason + ", in '" + unit + "': " + LayoutText.SAY_WHICH
                        : unit.isEmpty() ? reason + ", and so is the unit" : reason);
    }

    /** What the numbers of one column show. */
    private record Column(String name, boolean rises, boolean even, boolean endsHigh, double span) {
        static Column of(String name, double[] values) {
            int last = values.length - 1;
            long up = IntStream.range(0, last)
                    .filter(i -> values[i + 1] > values[i])
                    .count();
            double high = IntStream.rangeClosed(0, last)
                    .mapToDouble(i -> values[i])
                    .max()
                    .orElse(0);
            double low = IntStream.rangeClosed(0, last)
                    .mapToDouble(i -> values[i])
                    .min()
                    .orElse(0);
            double step = (values[last] - values[0]) / last;
            boolean even = IntStream.range(0, last)
                    .allMatch(i -> Math.abs(values[i + 1] - values[i] - step) <= EVEN * Math.abs(step));
            double tail = IntStream.rangeClosed(Math.max(0, last - last / 5), last)
                    .mapToDouble(i -> values[i])
                    .max()
                    .orElse(low);
            boolean endsHigh = high > low && tail - low >= MOSTLY * (high - low);
            return new Column(name, up >= MOSTLY * last, even, endsHigh, high - low);
        }
    }
}
