package org.tautlog.intake.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * Named columns of a table in a text file. Encoding, delimiter and decimal mark are found by the names asked for and by
 * the numbers below them; lines above the header and lines that begin with {@code #} are no rows.
 *
 * @param rows the rows whose every number could be read, in the file's order
 * @param rejected how many rows could not be used; rows in the file are those kept and those rejected
 * @param problems the first rejected rows, each with its place and reason
 */
public record CsvColumns(CsvRows rows, int rejected, List<Problem> problems) {
    /** Most rows that are kept of one file. */
    public static final int MOST_ROWS = 2_000_000;

    public CsvColumns {
        problems = List.copyOf(problems);
    }

    /**
     * Reads columns.
     *
     * @param file the file
     * @param numbers names of columns of numbers
     * @param texts names of columns of text
     * @param mostRows most rows that are read
     * @return the columns, or why there are none: no such file or column, no text, too large
     * @throws IOException where the file cannot be read on
     */
    public static Outcome<CsvColumns> read(Path file, List<String> numbers, List<String> texts, int mostRows)
            throws IOException {
        var rows = new CsvRows.Growing(numbers.size(), texts.size());
        var scan = CsvScan.each(file, numbers, texts, mostRows, rows::add);
        return scan.value().isEmpty()
                ? Outcome.failed(scan.problems())
                : Outcome.of(
                        new CsvColumns(
                                rows.rows(),
                                scan.value().get().rejected(),
                                scan.value().get().problems()),
                        List.of());
    }

    /**
     * {@return the same columns without the rows that somebody refuses, each refused one counted and named}
     *
     * @param file the file that they were read from
     * @param why why a row cannot be used, empty where it can
     */
    public CsvColumns without(Path file, Function<CsvRow, Optional<String>> why) {
        var kept = IntStream.builder();
        var named = new ArrayList<>(problems);
        for (int i = 0; i < rows.size(); i++) {
            var row = rows.get(i);
            var refused = why.apply(row);
            if (refused.isEmpty()) {
                kept.add(i);
            } else if (named.size() < CsvScan.MOST_PROBLEMS) {
                named.add(new Problem(
                        ProblemCode.BAD_VALUE, Where.line(file.toString(), row.line()), refused.get(), "", ""));
            }
        }
        var left = rows.at(kept.build().toArray());
        return new CsvColumns(left, rejected + rows.size() - left.size(), named);
    }
}
