package org.tautlog.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tautlog.intake.text.Cells;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.Row;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * The line that names the columns.
 *
 * @param line 1-based line
 * @param delimiter what cuts it
 * @param columns 0-based places of the columns asked for, in that order
 */
record HeaderLine(int line, char delimiter, List<Integer> columns) {
    private static final List<Character> DELIMITERS = List.of(';', '\t', ',', '|');
    private static final int MOST_NAMES = 40;

    HeaderLine {
        columns = List.copyOf(columns);
    }

    /** The first line that holds every name asked for under some delimiter. */
    static Outcome<HeaderLine> find(Where where, List<Line> head, List<String> wanted) {
        for (var line : head) {
            if (isNoRow(line)) {
                continue;
            }
            for (char delimiter : DELIMITERS) {
                var cells = new Cells(delimiter).of(line.text()).orElseGet(Row::none);
                var columns = wanted.stream().map(name -> named(cells, name)).toList();
                if (columns.stream().noneMatch(List::isEmpty)) {
                    return only(where, line, delimiter, columns, wanted);
                }
            }
        }
        return Outcome.failed(List.of(missing(where, head, wanted)));
    }

    static boolean isNoRow(Line line) {
        return line.isBlank() || line.text().startsWith("#");
    }

    private static Outcome<HeaderLine> only(
            Where where, Line line, char delimiter, List<List<Integer>> columns, List<String> wanted) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).size() > 1) {
                return Outcome.failed(List.of(new Problem(
                        ProblemCode.UNKNOWN_LAYOUT,
                        Where.line(where.file(), line.number()),
                        columns.get(i).size() + " columns are named " + Words.quoted(wanted.get(i)),
                        "",
                        "give each column a name of its own")));
            }
        }
        return Outcome.of(
                new HeaderLine(
                        line.number(),
                        delimiter,
                        columns.stream().map(found -> found.get(0)).toList()),
                List.of());
    }

    private static List<Integer> named(List<String> cells, String name) {
        var exact = IntStream.range(0, cells.size())
                .filter(i -> cells.get(i).equals(name.strip()))
                .boxed()
                .toList();
        return exact.isEmpty()
                ? IntStream.range(0, cells.size())
                        .filter(i -> cells.get(i).equalsIgnoreCase(name.strip()))
                        .boxed()
                        .toList()
                : exact;
    }

    /** Offers the names of the line that most looks like a header: the first of those that are cut into most cells. */
    private static Problem missing(Where where, List<Line> head, List<String> wanted) {
        List<String> best = new ArrayList<>();
        for (char delimiter : DELIMITERS) {
            for (var line : head) {
                var cells = isNoRow(line)
                        ? List.<String>of()
                        : new Cells(delimiter).of(line.text()).orElseGet(Row::none);
                if (cells.size() > best.size()) {
                    best = cells;
                }
            }
        }
        var cells = best;
        var absent =
                wanted.stream().filter(name -> named(cells, name).isEmpty()).toList();
        return new Problem(
                ProblemCode.MISSING_COLUMN,
                where,
                "no column "
                        + (absent.isEmpty() ? wanted : absent)
                                .stream().map(Words::quoted).collect(Collectors.joining(", ")),
                "",
                cells.isEmpty()
                        ? "the file holds no rows"
                        : "the columns are: "
                                + cells.stream()
                                        .limit(MOST_NAMES)
                                        .map(Words::quoted)
                                        .collect(Collectors.joining(", ")));
    }
}
