package org.tautlog.intake.layout;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tautlog.intake.text.Cells;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.Row;

/**
 * Writes how one file lies as a layout file: what was told from the file is stated, each line with its reason, so that a
 * person can correct what is wrong and nothing is left to be told again.
 */
public final class LayoutText {
    /** End of the reason of a line that states nothing, as its unit is not known. */
    public static final String SAY_WHICH = "say which unit it is; CHECK THIS";

    private final FileLayout layout;
    private final Map<String, String> guesses;
    private final List<List<String>> rows;
    private final List<String> headTimes;
    private final LayoutLines text;
    private final StatedAbove above;

    private LayoutText(
            String file, FileLayout layout, List<String> headTimes, Map<String, String> guesses, List<Line> head) {
        this.text = new LayoutLines(file);
        this.layout = layout;
        this.headTimes = List.copyOf(headTimes);
        this.guesses = guesses;
        this.above = StatedAbove.of(head, layout.headerLine());
        var cutter = new Cells(layout.delimiter());
        this.rows = head.stream()
                .filter(line -> line.number() > Math.max(layout.headerLine(), layout.unitsLine()))
                .<List<String>>map(line -> cutter.of(line.text()).orElseGet(Row::none))
                .filter(row -> row.size() == layout.header().size())
                .toList();
    }

    /**
     * Writes a layout.
     *
     * @param file the file's name, for the first line
     * @param charset the file's encoding
     * @param layout how it lies
     * @param headings the keys above the table that say what the trace is of, by field
     * @param times the recording times above the table
     * @param guesses reasons that take the place of the usual ones, by key of the layout file, for example {@code angle}
     * @param head the file's first lines
     * @return the text of a layout file
     */
    public static String of(
            String file,
            Charset charset,
            FileLayout layout,
            Map<IdentityField, String> headings,
            List<String> times,
            Map<String, String> guesses,
            List<Line> head) {
        var writing = new LayoutText(file, layout, times, guesses, head);
        writing.write(charset, headings);
        return writing.text.text();
    }

    private void write(Charset charset, Map<IdentityField, String> headings) {
        text.section("log");
        text.line("shape", LayoutLines.quoted(layout.shape().word()), shapeReason());
        text.section("text");
        text.line("encoding", LayoutLines.quoted(charset.name()), "told from the first bytes");
        text.line(
                "delimiter",
                LayoutLines.quoted(delimiter()),
                "cuts line " + layout.headerLine() + " into the most known columns");
        var mark = String.valueOf(layout.numbers().decimalMark());
        text.line("decimal-mark", LayoutLines.quoted(mark), "the last mark in most numbers");
        if (layout.numbers().thousandsStated() || thousands()) {
            text.line("thousands", "true", "no other reading explains the numbers");
        }
        text.section("identity");
        writeIdentity(headings);
        text.time(times(), layout.stated().time().zone());
        text.section("samples");
        for (var quantity : SampleQuantity.values()) {
            var source = layout.samples().get(quantity);
            var reason = guesses.getOrDefault(quantity.key(), "");
            if (source != null && source.isColumn() && reason.endsWith(SAY_WHICH)) {
                text.comment(quantity.key() + " = { column = "
                        + LayoutLines.quoted(layout.header().get(source.column())) + ", unit = \"\" }   # " + reason);
            } else if (source != null && source.isColumn()) {
                text.line(quantity.key(), sample(quantity, source), sampleReason(quantity, source));
            }
        }
        writeTrace();
    }

    private boolean thousands() {
        return layout.samples().values().stream()
                .filter(SampleColumn::isColumn)
                .anyMatch(source -> NumberSearch.provesThousands(
                        rows.stream().map(row -> row.get(source.column())).toList(),
                        layout.numbers().decimalMark()));
    }

    private String shapeReason() {
        return switch (layout.shape()) {
            case FILE_PER_TRACE -> "no column tells traces apart";
            case LONG_TABLE -> "one sample a row; " + names(layout.keyColumns()) + " tell traces apart";
            case ROW_PER_TRACE -> "a cell holds a whole list of values";
        };
    }

    private String delimiter() {
        return layout.delimiter() == '\t'
                ? "tab"
                : layout.delimiter() == Cells.BLANKS ? "blanks" : String.valueOf(layout.delimiter());
    }

    private void writeIdentity(Map<IdentityField, String> headings) {
        for (var field : IdentityField.values()) {
            var column = layout.identityColumns().get(field);
            var heading = headings.get(field);
            if (column != null) {
                var name = layout.header().get(column);
                text.line(
                        field.key(),
                        "{ column = " + LayoutLines.quoted(name) + " }",
                        "a usual name of it" + example(column));
            } else if (heading != null) {
                text.line(field.key(), "{ header = " + LayoutLines.quoted(heading) + " }", "a line above the table");
            } else if (layout.stated().identity().get(field) instanceof Origin.FileName from) {
                text.line(
                        field.key(),
                        "{ file = " + LayoutLines.quoted(from.group()) + " }",
                        "nothing in the file names it; CHECK THIS");
            } else if (field == IdentityField.SERIAL) {
                text.noSerial();
            }
        }
        var pattern = layout.stated().fileName();
        if (pattern != null) {
            text.line("file-name", LayoutLines.quoted(pattern.pattern()), "the whole name without its ending");
        }
    }

    private List<String> times() {
        var column = layout.identityColumns().get(IdentityField.TIME);
        return column == null
                ? headTimes
                : rows.stream().map(row -> row.get(column)).distinct().toList();
    }

    private String sample(SampleQuantity quantity, SampleColumn source) {
        var name = "{ column = " + LayoutLines.quoted(layout.header().get(source.column()));
        if (quantity == SampleQuantity.STAGE) {
            var marks = marks(source);
            return name + (marks.isEmpty() ? "" : ", marks = { " + marks + " }") + " }";
        }
        return name + ", unit = " + LayoutLines.quoted(unit(quantity, source))
                + (source.factor() < 0 ? ", tightening = \"negative\"" : "") + " }";
    }

    /** Words of a stage column get numbers in the order in which they come. */
    private String marks(SampleColumn source) {
        if (!source.marks().isEmpty()) {
            return source.marks().entrySet().stream()
                    .sorted(Map.Entry.comparingByValue())
                    .map(mark -> LayoutLines.quoted(mark.getKey()) + " = " + mark.getValue())
                    .collect(Collectors.joining(", "));
        }
        return LayoutLines.marks(rows.stream()
                .map(row -> row.get(source.column()))
                .filter(cell -> !cell.isEmpty() && layout.numbers().parse(cell).isEmpty())
                .toList());
    }

    private static String unit(SampleQuantity quantity, SampleColumn source) {
        var physical = quantity.quantity().orElseThrow();
        return physical.symbols().stream()
                .filter(symbol -> physical.factor(symbol).orElse(Double.NaN) == Math.abs(source.factor()))
                .findFirst()
                .orElse(quantity.usualUnit());
    }

    private String sampleReason(SampleQuantity quantity, SampleColumn source) {
        var guess = guesses.get(quantity.key());
        if (guess != null) {
            return guess + "; CHECK THIS";
        }
        boolean unitKnown = quantity == SampleQuantity.STAGE
                || layout.unitsLine() > 0
                || !above.unit(quantity).isEmpty()
                || !ColumnName.of(layout.header().get(source.column())).unit().isEmpty();
        return (unitKnown ? "a usual name of it" : "a usual name of it; the file states NO UNIT")
                + example(source.column());
    }

    private String example(int column) {
        var cell = rows.isEmpty() ? "" : rows.get(0).get(column);
        return cell.isEmpty() || cell.length() > 30 ? "" : ", such as " + cell.replaceAll("\\p{Cntrl}", "?");
    }

    private void writeTrace() {
        if (layout.shape() == LogShape.LONG_TABLE) {
            text.section("trace");
            var keys = layout.keyColumns().stream()
                    .map(column -> LayoutLines.quoted(layout.header().get(column)))
                    .collect(Collectors.joining(", "));
            text.line("key", "[" + keys + "]", "where one of these changes the next trace begins");
        } else if (layout.shape() == LogShape.ROW_PER_TRACE) {
            text.section("trace");
            text.line(
                    "list-separator",
                    LayoutLines.quoted(String.valueOf(layout.listSeparator())),
                    "between the values of a list cell");
        }
    }

    private String names(List<Integer> columns) {
        var names = new ArrayList<String>();
        columns.forEach(column -> names.add(layout.header().get(column)));
        return String.join(", ", names);
    }
}
