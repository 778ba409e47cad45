package org.tautlog.intake.layout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tautlog.intake.text.Cells;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.NumberForm;
import org.tautlog.intake.text.Row;

/** A layout file to be filled in: the columns of a table whose names and numbers say nothing. */
public final class LayoutSkeleton {
    private static final List<Character> DELIMITERS = List.of(';', '\t', ',', '|', Cells.BLANKS);
    private static final int FEWEST_ROWS = 2;

    private LayoutSkeleton() {}

    /**
     * Writes one.
     *
     * @param file the file's name, for the first line
     * @param head the file's first lines
     * @return the text of a layout file that states nothing yet, or empty where no line names columns of numbers
     */
    public static Optional<String> of(String file, List<Line> head) {
        var lines =
                head.stream().filter(line -> !line.isBlank() && !line.tooLong()).toList();
        for (var delimiter : DELIMITERS) {
            var cutter = new Cells(delimiter);
            var rows = lines.stream()
                    .<List<String>>map(line -> cutter.of(line.text()).orElseGet(Row::none))
                    .toList();
            for (int i = 0; i + FEWEST_ROWS < rows.size(); i++) {
                if (namesNumbers(rows.subList(i, Math.min(rows.size(), i + 2 + FEWEST_ROWS)))) {
                    return Optional.of(text(file, rows.get(i), lines.get(i).number()));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether the first of some rows holds names, and the last ones as many cells with numbers or lists among them. */
    private static boolean namesNumbers(List<List<String>> rows) {
        var names = rows.get(0);
        boolean words = names.size() >= 2
                && names.stream().allMatch(cell -> cell.codePoints().anyMatch(Character::isLetter));
        var last = rows.subList(rows.size() - FEWEST_ROWS, rows.size());
        return words
                && last.stream()
                        .allMatch(row -> row.size() == names.size()
                                && row.stream()
                                                .filter(LayoutSkeleton::holdsNumbers)
                                                .count()
                                        >= 2);
    }

    private static boolean holdsNumbers(String cell) {
        var first = NumberSearch.withoutBrackets(cell).split("[\\s;|,]+", 2)[0];
        return new NumberForm('.', true).parse(first).isPresent();
    }

    private static String text(String file, List<String> names, int line) {
        var text = new LayoutLines(file);
        text.comment("Neither names nor numbers say what its columns hold. Line " + line + " names these:");
        IntStream.range(0, names.size()).forEach(i -> text.comment("  " + LayoutLines.quoted(names.get(i))));
        text.comment("Fill in the lines below and take the # before them away.");
        text.section("identity");
        text.comment("serial = { column = \"\" }");
        text.section("samples");
        for (var quantity : List.of(SampleQuantity.ANGLE, SampleQuantity.TORQUE)) {
            text.comment(quantity.key() + " = { column = \"\", unit = \"\" }   # one of "
                    + quantity.quantity().orElseThrow().symbols().stream().collect(Collectors.joining(", "))
                    + "; CHECK THIS");
        }
        return text.text();
    }
}
