package org.tautlog.intake.text;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * Cuts a line into its cells. Each line stands alone: a quote left open spoils its own line and not the rest of the
 * file, so a cell cannot hold a line end. Cells are stripped of outer blanks.
 *
 * <p>A blank as delimiter stands for columns that are aligned: any run of blanks and tabs cuts, and a unit in brackets or
 * behind a stroke belongs to the name before it.
 */
public final class Cells {
    /** The delimiter of columns that are aligned by blanks. */
    public static final char BLANKS = ' ';

    private final char delimiter;
    private final CSVFormat quoted;
    private int cellsBefore = 1;

    /**
     * Cuts at a delimiter.
     *
     * @param delimiter the character between cells; neither a quote nor a line end
     */
    public Cells(char delimiter) {
        this.delimiter = delimiter;
        this.quoted = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(delimiter != ' ' && delimiter != '\t')
                .get();
    }

    /**
     * Cuts a line.
     *
     * @param line the line without its end
     * @return its cells, at least one; empty where quotes stand so that there is no telling
     */
    public Optional<Row> of(String line) {
        // A line without quotes needs no parser, and nearly all lines of an export are such.
        if (line.indexOf('"') >= 0) {
            return withQuotes(line);
        }
        return Optional.of(delimiter == BLANKS ? Row.of(aligned(line)) : plain(line));
    }

    private static List<String> aligned(String line) {
        var cells = new ArrayList<String>();
        int end = line.length();
        int at = 0;
        while (at < end) {
            while (at < end && Character.isWhitespace(line.charAt(at))) {
                at++;
            }
            int from = at;
            while (at < end && !Character.isWhitespace(line.charAt(at))) {
                at++;
            }
            if (at > from) {
                addAligned(cells, line.substring(from, at));
            }
        }
        if (cells.isEmpty()) {
            cells.add("");
        }
        return cells;
    }

    private static void addAligned(List<String> cells, String word) {
        int last = cells.size() - 1;
        boolean unit = word.startsWith("(") || word.startsWith("[") || word.startsWith("/");
        if (last >= 0
                && Character.isLetter(cells.get(last).charAt(0))
                && (unit || cells.get(last).endsWith("/"))) {
            cells.set(last, cells.get(last) + ' ' + word);
        } else {
            cells.add(word);
        }
    }

    private Row plain(String line) {
        var begins = new int[cellsBefore + 1];
        int cells = 0;
        var text = line.toCharArray();
        int end = text.length;
        for (int at = 0; at <= end; at++) {
            if (at == end || text[at] == delimiter) {
                cells++;
                begins = cells < begins.length ? begins : Arrays.copyOf(begins, 2 * cells);
                begins[cells] = at + 1;
            }
        }
        cellsBefore = cells;
        return new Row.Cut(text, begins, cells);
    }

    private Optional<Row> withQuotes(String line) {
        try (var parser = CSVParser.parse(line, quoted)) {
            var records = parser.getRecords();
            return records.size() == 1
                    ? Optional.of(Row.of(records.get(0).stream()
                            .map(String::strip)
                            .filter(cell -> delimiter != BLANKS || !cell.isEmpty())
                            .toList()))
                    : Optional.empty();
        } catch (CSVException | java.io.UncheckedIOException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("reading from memory", e);
        }
    }
}
