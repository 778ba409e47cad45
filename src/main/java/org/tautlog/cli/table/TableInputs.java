package org.tautlog.cli.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.table.CsvColumns;
import org.tautlog.intake.table.CsvRow;
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

    List<String> by() {
        return by;
    }

    /** The rows with their numbers and texts, the columns of {@code --by} first among the texts. */
    CsvColumns read(List<String> numbers, List<String> texts, PrintWriter err) throws IOException {
        var names = new ArrayList<>(by);
        names.addAll(texts);
        var columns = Refusal.orRefuse(CsvColumns.read(file, numbers, names));
        columns.problems().forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
        if (columns.rejected() > 0) {
            err.println(columns.rejected() + " of " + (columns.rows().size() + columns.rejected())
                    + " rows could not be used"
                    + (columns.rejected() > columns.problems().size()
                            ? "; the first " + columns.problems().size() + " are named above"
                            : ""));
        }
        return columns;
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
        return IntStream.range(0, by.size())
                .mapToObj(i -> by.get(i) + " " + row.texts().get(i))
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
