package org.tautlog.intake.table;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tautlog.intake.layout.NumberSearch;
import org.tautlog.intake.text.Cells;
import org.tautlog.intake.text.Encoding;
import org.tautlog.intake.text.FormulaGuard;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.LineSource;
import org.tautlog.intake.text.NumberForm;
import org.tautlog.intake.text.Row;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * Named columns of a table in a text file, row by row and in constant memory. Encoding, delimiter and decimal mark are found by the names asked for and by
 * the numbers below them; lines above the header and lines that begin with {@code #} are no rows.
 *
 * @param kept how many rows were handed on, each with every number read
 * @param rejected how many rows could not be used; rows in the file are those kept and those rejected
 * @param problems the first rejected rows, each with its place and reason
 */
public record CsvScan(int kept, int rejected, List<Problem> problems) {
    /** Most rejected rows that are told one by one; the others are counted. */
    public static final int MOST_PROBLEMS = 20;

    private static final int LONGEST_LINE = 1 << 20;
    private static final int HEAD_LINES = 200;
    private static final int HEAD_CHARACTERS = 1 << 18;

    public CsvScan {
        problems = List.copyOf(problems);
    }

    /** Takes the rows one after another. */
    @FunctionalInterface
    public interface Taker {
        /**
         * Takes the next row.
         *
         * @param line 1-based line in the file
         * @param numbers the cells of the columns of numbers, finite, in the order asked for
         * @param texts the cells of the columns of text, in the order asked for
         */
        void take(int line, double[] numbers, List<String> texts);
    }

    /**
     * Hands on the cells of each row.
     *
     * @param file the file
     * @param numbers names of columns of numbers
     * @param texts names of columns of text
     * @param mostRows most rows that are read
     * @param taker takes each row that can be used, in the file's order
     * @return how many rows there were, or why there are none: no such file or column, no text, too large
     * @throws IOException where the file cannot be read on
     */
    public static Outcome<CsvScan> each(Path file, List<String> numbers, List<String> texts, int mostRows, Taker taker)
            throws IOException {
        var where = Where.file(file.toString());
        return open(file, where, lines -> each(where, lines, numbers, texts, mostRows, taker));
    }

    /**
     * Reads the headings alone, from the head of the file.
     *
     * @param file the file
     * @param known names that must be among them
     * @return all headings in the file's order, or why there are none
     * @throws IOException where the file cannot be read on
     */
    public static Outcome<List<String>> headings(Path file, List<String> known) throws IOException {
        var where = Where.file(file.toString());
        return open(file, where, lines -> {
            var head = lines.peek(HEAD_LINES, HEAD_CHARACTERS);
            var found = HeaderLine.find(where, head, known);
            return found.value()
                    .map(header -> Outcome.of(
                            head.stream()
                                    .filter(line -> line.number() == header.line())
                                    .flatMap(line -> new Cells(header.delimiter()).of(line.text()).stream())
                                    .flatMap(List::stream)
                                    .map(String::strip)
                                    .toList(),
                            List.of()))
                    .orElseGet(() -> Outcome.failed(found.problems()));
        });
    }

    @FunctionalInterface
    private interface Lines<T> {
        Outcome<T> read(LineSource lines) throws IOException;
    }

    private static <T> Outcome<T> open(Path file, Where where, Lines<T> what) throws IOException {
        if (!Files.isRegularFile(file)) {
            return failed(ProblemCode.NOT_READABLE, where, "there is no such file", "check the path");
        }
        try (var in = new BufferedInputStream(Files.newInputStream(file), Encoding.HEAD_BYTES)) {
            in.mark(Encoding.HEAD_BYTES + 1);
            var head = in.readNBytes(Encoding.HEAD_BYTES);
            in.reset();
            if (head.length == 0) {
                return failed(ProblemCode.EMPTY_FILE, where, "the file is empty", "");
            }
            var encoding = Encoding.sniff(head, head.length);
            if (encoding.isEmpty()) {
                return failed(ProblemCode.NOT_TEXT, where, "the file is no text", "export the table as CSV");
            }
            in.skipNBytes(encoding.get().markBytes());
            try (var lines =
                    new LineSource(new InputStreamReader(in, encoding.get().charset()), LONGEST_LINE)) {
                return what.read(lines);
            }
        } catch (NoSuchFileException e) {
            return failed(ProblemCode.NOT_READABLE, where, "there is no such file", "check the path");
        }
    }

    private static Outcome<CsvScan> each(
            Where where, LineSource lines, List<String> numbers, List<String> texts, int mostRows, Taker taker)
            throws IOException {
        var wanted = new ArrayList<>(numbers);
        wanted.addAll(texts);
        var head = lines.peek(HEAD_LINES, HEAD_CHARACTERS);
        var search = HeaderLine.find(where, head, wanted);
        if (search.value().isEmpty()) {
            return Outcome.failed(search.problems());
        }
        var header = search.value().get();
        var cutter = new Cells(header.delimiter());
        var form = new NumberForm(decimalMark(head, header, cutter, numbers.size()), false);
        var reading = new Reading(where, header, cutter, form, numbers, texts, taker);
        for (var next = lines.next(); next.isPresent(); next = lines.next()) {
            reading.take(next.get());
            if (reading.count() > mostRows) {
                return failed(
                        ProblemCode.TOO_LARGE,
                        where,
                        String.format(Locale.ROOT, "the table holds more than %d rows", mostRows),
                        "cut the file");
            }
        }
        return Outcome.of(new CsvScan(reading.kept, reading.rejected, reading.problems), List.of());
    }

    private static char decimalMark(List<Line> head, HeaderLine header, Cells cutter, int numbers) {
        var cells = new ArrayList<String>();
        for (var line : head) {
            if (line.number() > header.line()) {
                var row = cutter.of(line.text()).orElseGet(Row::none);
                header.columns().subList(0, numbers).stream()
                        .filter(column -> column < row.size())
                        .forEach(column -> cells.add(row.get(column)));
            }
        }
        return NumberSearch.decimalMark(cells);
    }

    private static <T> Outcome<T> failed(ProblemCode code, Where where, String what, String action) {
        return Outcome.failed(List.of(new Problem(code, where, what, "", action)));
    }

    /** The rows of one file as they come. */
    private static final class Reading {
        private final Where where;
        private final HeaderLine header;
        private final Cells cutter;
        private final NumberForm form;
        private final List<String> numbers;
        private final List<String> texts;
        private final Taker taker;
        private final List<Problem> problems = new ArrayList<>();
        private int kept;
        private int rejected;

        Reading(
                Where where,
                HeaderLine header,
                Cells cutter,
                NumberForm form,
                List<String> numbers,
                List<String> texts,
                Taker taker) {
            this.where = where;
            this.header = header;
            this.cutter = cutter;
            this.form = form;
            this.numbers = numbers;
            this.texts = texts;
            this.taker = taker;
        }

        int count() {
            return kept + rejected;
        }

        void take(Line line) {
            if (line.number() <= header.line() || HeaderLine.isNoRow(line)) {
                return;
            }
            var cut = line.tooLong() ? java.util.Optional.<List<String>>empty() : cutter.of(line.text());
            if (cut.isEmpty()) {
                reject(ProblemCode.BAD_ROW, line, "", "the line is too long or its quotes do not close");
                return;
            }
            var cells = cut.get();
            var read = new double[numbers.size()];
            for (int i = 0; i < numbers.size(); i++) {
                var cell = cell(cells, i);
                var number = form.parse(cell);
                if (number.isEmpty()) {
                    var what = cell.isEmpty() ? "the cell is empty" : Words.quoted(cell) + " is no number";
                    reject(ProblemCode.NOT_A_NUMBER, line, numbers.get(i), what);
                    return;
                }
                read[i] = number.getAsDouble();
            }
            var said = new ArrayList<String>();
            for (int i = 0; i < texts.size(); i++) {
                said.add(FormulaGuard.unguard(cell(cells, numbers.size() + i)));
            }
            taker.take(line.number(), read, said);
            kept++;
        }

        private String cell(List<String> cells, int wanted) {
            int column = header.columns().get(wanted);
            return column < cells.size() ? cells.get(column) : "";
        }

        private void reject(ProblemCode code, Line line, String column, String what) {
            rejected++;
            if (problems.size() < MOST_PROBLEMS) {
                problems.add(new Problem(
                        code, Where.line(where.file(), line.number()).at(column), what, "", ""));
            }
        }
    }
}
