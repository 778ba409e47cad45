package org.tautlog.intake.text;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * Cuts a line into its cells. Each line stands alone: a quote left open spoils its own line and not the rest of the
 * file, so a cell cannot hold a line end. Cells are stripped of outer blanks.
 */
public final class Cells {
    private final char delimiter;
    private final CSVFormat quoted;

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
    public Optional<List<String>> of(String line) {
        // A line without quotes needs no parser, and nearly all lines of an export are such.
        return line.indexOf('"') < 0 ? Optional.of(plain(line)) : withQuotes(line);
    }

    private List<String> plain(String line) {
        var cells = new ArrayList<String>();
        int from = 0;
        for (int at = line.indexOf(delimiter); at >= 0; at = line.indexOf(delimiter, from)) {
            cells.add(line.substring(from, at).strip());
            from = at + 1;
        }
        cells.add(line.substring(from).strip());
        return cells;
    }

    private Optional<List<String>> withQuotes(String line) {
        try (var parser = CSVParser.parse(line, quoted)) {
            var records = parser.getRecords();
            return records.size() == 1
                    ? Optional.of(records.get(0).stream().map(String::strip).toList())
                    : Optional.empty();
        } catch (CSVException | java.io.UncheckedIOException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("reading from memory", e);
        }
    }
}
