package org.tautlog.intake.text;

import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The lines of a text, one at a time. Line ends may be LF, CRLF or CR, mixed. Of a line longer than the bound only the
 * beginning is kept, so that a file without any line end needs no more memory than another.
 */
public final class LineSource implements Closeable {
    private static final int BUFFER = 1 << 14;
    private static final int KEPT_OF_TOO_LONG = 80;

    private final Reader reader;
    private final int longest;
    private final char[] buffer = new char[BUFFER];
    private final Deque<Line> ahead = new ArrayDeque<>();
    private @Nullable IOException broken;
    private int from;
    private int until;
    private int lookedTo;
    private boolean afterReturn;
    private int linesRead;
    private long linesTaken;

    /**
     * Reads the lines of a text.
     *
     * @param reader the text; closed with this source
     * @param longest longest line that is kept whole, characters, at least 1
     */
    public LineSource(Reader reader, int longest) {
        if (longest < 1) {
            throw new IllegalArgumentException("longest is " + longest + "; at least 1 character is needed");
        }
        this.reader = reader;
        this.longest = longest;
    }

    /**
     * Takes the next line.
     *
     * @return the line, or empty at the end of the text
     * @throws IOException where the text cannot be read on; what was read of the line so far is lost
     */
    public Optional<Line> next() throws IOException {
        var line = ahead.isEmpty() ? read() : ahead.poll();
        if (line == null) {
            return Optional.empty();
        }
        linesTaken++;
        return Optional.of(line);
    }

    /**
     * Looks at the next line as a row, where it stands, without taking it.
     *
     * @param rows which rows are wanted
     * @return the row, good until the next one is looked at; empty where the line is none of these or does not lie whole
     *     and ended in what was read ahead, so that it is to be had from {@link #next()} only
     * @throws IOException where the text cannot be read on
     */
    public Optional<Row> look(RowsAlike rows) throws IOException {
        if (!ahead.isEmpty() || broken != null || !fill()) {
            return Optional.empty();
        }
        lookedTo = rows.end(buffer, from, until);
        return lookedTo < 0 || lookedTo - from > longest ? Optional.empty() : rows.found();
    }

    /** Takes the row that was found by the last look. */
    public void takeRow() {
        pass(lookedTo);
        countLine();
        linesTaken++;
    }

    /**
     * Looks at the beginning of the text without taking it. Trouble on the way is kept for whoever takes the lines.
     *
     * @param mostLines how many lines to look at
     * @param mostCharacters after how many characters to stop looking
     * @return the lines; fewer where the text ends or breaks off before
     */
    public List<Line> peek(int mostLines, int mostCharacters) {
        int characters = 0;
        try {
            while (ahead.size() < mostLines && characters < mostCharacters) {
                var line = read();
                if (line == null) {
                    break;
                }
                characters += line.text().length();
                ahead.add(line);
            }
        } catch (IOException e) {
            broken = e;
        }
        return List.copyOf(ahead);
    }

    /** {@return how many lines were taken} */
    public long linesTaken() {
        return linesTaken;
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }

    private @Nullable Line read() throws IOException {
        if (broken != null) {
            throw broken;
        }
        if (!fill()) {
            return null;
        }
        int end = end();
        if (end == until || end - from > longest) {
            return readInParts();
        }
        // Nearly every line lies whole in the buffer.
        var whole = new String(buffer, from, end - from);
        pass(end);
        return line(whole, true, false);
    }

    private Line readInParts() throws IOException {
        var text = new StringBuilder();
        boolean tooLong = false;
        do {
            int end = end();
            int room = longest - text.length();
            if (!tooLong && end - from > room) {
                tooLong = true;
                text.append(buffer, from, Math.max(0, Math.min(room, KEPT_OF_TOO_LONG)));
                text.setLength(Math.min(text.length(), KEPT_OF_TOO_LONG));
            } else if (!tooLong) {
                text.append(buffer, from, end - from);
            }
            if (end < until) {
                pass(end);
                return line(text.toString(), true, tooLong);
            }
            from = end;
        } while (fill());
        return line(text.toString(), false, tooLong);
    }

    /** Where the line ends that is read; the buffer's end where it does not end there. */
    private int end() {
        int end = from;
        while (end < until && (buffer[end] > '\r' || (buffer[end] != '\n' && buffer[end] != '\r'))) {
            end++;
        }
        return end;
    }

    private void pass(int end) {
        afterReturn = buffer[end] == '\r';
        from = end + 1;
    }

    private Line line(String text, boolean ended, boolean tooLong) {
        countLine();
        return new Line(text, linesRead, ended, tooLong);
    }

    private void countLine() {
        linesRead = linesRead == Integer.MAX_VALUE ? linesRead : linesRead + 1;
    }

    /** Makes sure that there is a character to look at, past the LF of a CRLF whose CR ended the last line. */
    private boolean fill() throws IOException {
        while (true) {
            if (from == until) {
                from = 0;
                until = Math.max(0, reader.read(buffer));
                if (until == 0) {
                    return false;
                }
            }
            if (!afterReturn) {
                return true;
            }
            afterReturn = false;
            if (buffer[from] != '\n') {
                return true;
            }
            from++;
        }
    }
}
