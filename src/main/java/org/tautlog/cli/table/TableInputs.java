package org.tautlog.cli.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.table.CsvColumns;
import org.tautlog.intake.table.CsvRow;
import org.tautlog.intake.table.CsvScan;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A table from elsewhere and how its rows are grouped: what the commands on tables have in common. */
final class TableInputs {
    @Parameters(paramLabel = "FILE", description = "Table as CSV; delimiter, encoding and decimal mark are found.")
    private Path file = Path.of("");

    @Option(
            names = "--by",
            paramLabel = "COL",
            description = "Column whose every value is a group of its own; may be repeated.")
    private List<String> by = List.of();

    Path file() {
        return file;
    }

    List<String> by() {
        return by;
    }

    /** Takes the columns of {@code --by} in another order, in which limits name their groups. */
    void by(List<String> inOrder) {
        by = inOrder;
    }

    /** The rows with their numbers and texts, the columns of {@code --by} first among the texts. */
    CsvColumns read(List<String> numbers, List<String> texts, PrintWriter err) throws IOException {
        return kept(all(numbers, texts), err);
    }

    /** The same without the rows that somebody refuses. */
    CsvColumns read(
            List<String> numbers, List<String> texts, Function<CsvRow, Optional<String>> refuses, PrintWriter err)
            throws IOException {
        return kept(all(numbers, texts).without(file, refuses), err);
    }

    private CsvColumns all(List<String> numbers, List<String> texts) throws IOException {
        return Refusal.orRefuse(CsvColumns.read(file, numbers, names(texts), CsvColumns.MOST_ROWS));
    }

    /** The rows, or nothing where there are more than so many. */
    Optional<CsvColumns> readUpTo(int most, List<String> numbers, List<String> texts, PrintWriter err)
            throws IOException {
        var read = CsvColumns.read(file, numbers, names(texts), most);
        boolean more = read.problems().stream().anyMatch(problem -> problem.code() == ProblemCode.TOO_LARGE);
        return more ? Optional.empty() : Optional.of(kept(Refusal.orRefuse(read), err));
    }

    /** Hands on each row without keeping it; the texts are those of {@code --by}. */
    CsvScan each(List<String> numbers, CsvScan.Taker taker) throws IOException {
        return Refusal.orRefuse(CsvScan.each(file, numbers, by, Integer.MAX_VALUE - 1, taker));
    }

    private List<String> names(List<String> texts) {
        var names = new ArrayList<>(by);
        names.addAll(texts);
        return names;
    }

    private static CsvColumns kept(CsvColumns columns, PrintWriter err) {
        say(columns.rejected(), columns.rows().size(), columns.problems(), err);
        return columns;
    }

    /** Names the rows that could not be used. */
    static void say(int rejected, int kept, List<Problem> problems, PrintWriter err) {
        problems.forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
        if (rejected > 0) {
            err.println(rejected + " of " + (kept + rejected) + " rows could not be used"
                    + (rejected > problems.size() ? "; the first " + problems.size() + " are named above" : ""));
        }
    }

    /** Rows by the words of their group, in the file's order; one group without a name where none is asked for or there is no row. */
    Map<String, List<CsvRow>> groups(CsvColumns columns) {
        var rows = columns.rows();
        var groups = new LinkedHashMap<String, List<CsvRow>>();
        if (by.isEmpty() || rows.isEmpty()) {
            groups.put("", rows);
            return groups;
        }
        var places = new LinkedHashMap<String, IntStream.Builder>();
        for (int i = 0; i < rows.size(); i++) {
            places.computeIfAbsent(group(rows.get(i)), name -> IntStream.builder())
                    .add(i);
        }
        places.forEach((name, of) -> groups.put(name, rows.at(of.build().toArray())));
        return groups;
    }

    String group(CsvRow row) {
        return group(row.texts());
    }

    String group(List<String> texts) {
        return IntStream.range(0, by.size())
                .mapToObj(i -> by.get(i) + " " + texts.get(i))
                .collect(Collectors.joining(", "));
    }

    /** How many values running make a subgroup, where the word is a number and no column. */
    static java.util.OptionalInt size(String subgroup) {
        try {
            return java.util.OptionalInt.of(Integer.parseInt(subgroup));
        } catch (NumberFormatException e) {
            return java.util.OptionalInt.empty();
        }
    }
}
