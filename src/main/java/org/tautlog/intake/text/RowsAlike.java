package org.tautlog.intake.text;

import java.util.Arrays;
import java.util.Optional;

/**
 * Rows that begin as one before them did and end in as many plain cells, looked at where they stand in the text: so lie
 * the samples of a trace, nearly all lines of an export. Nothing is made of such a row but its numbers; any other line is
 * no row of these, and becomes a {@link Line} first.
 */
public final class RowsAlike {
    private final char delimiter;
    private final String comment;
    private final char[] head;
    private final int headCells;
    private final int cells;
    private final int[] begins;
    private final Row.Cut row;
    private final Optional<Row> found;

    private RowsAlike(char[] head, int[] headBegins, int headCells, int cells, char delimiter, String comment) {
        this.head = head;
        this.headCells = headCells;
        this.cells = cells;
        this.delimiter = delimiter;
        this.comment = comment;
        this.begins = Arrays.copyOf(headBegins, cells + 1);
        this.row = new Row.Cut(head, begins, cells);
        this.found = Optional.of(row);
    }

    /**
     * Rows of any beginning.
     *
     * @param cells how many cells each has, at least 1
     * @param delimiter the character between cells
     * @param comment beginning of lines that are no rows; empty where there are none
     * @return the rows; empty where blanks align the columns, so that cells cannot be told in passing
     */
    public static Optional<RowsAlike> any(int cells, char delimiter, String comment) {
        return delimiter == Cells.BLANKS
                ? Optional.empty()
                : Optional.of(new RowsAlike(new char[0], new int[1], 0, cells, delimiter, comment));
    }

    /**
     * Rows that begin as another.
     *
     * @param first the other row
     * @param same how many cells must be the same, up to the delimiter behind them and with the blanks around them
     * @param cells how many cells each has, more than those
     * @param delimiter the character between cells
     * @param comment beginning of lines that are no rows; empty where there are none
     * @return the rows; empty where the other row was no plain line
     */
    public static Optional<RowsAlike> after(Row first, int same, int cells, char delimiter, String comment) {
        return first instanceof Row.Cut cut && same < Math.min(cells, cut.size()) && delimiter != Cells.BLANKS
                ? Optional.of(new RowsAlike(cut.head(same), cut.begins(same), same, cells, delimiter, comment))
                : Optional.empty();
    }

    /** The row that was found last. */
    Optional<Row> found() {
        return found;
    }

    /** Where the line from a place on ends, if it is one of these rows and ends before another place; else -1. */
    int end(char[] text, int from, int until) {
        int at = from + head.length;
        if (at > until || !Arrays.equals(text, from, at, head, 0, head.length) || isComment(text, from, until)) {
            return -1;
        }
        int cell = headCells;
        for (; at < until; at++) {
            char c = text[at];
            if (c == delimiter) {
                cell++;
                if (cell == cells) {
                    return -1;
                }
                begins[cell] = at + 1 - from;
            } else if (c <= '"' && (c == '\n' || c == '\r' || c == '"' || c == '\0')) {
                break;
            }
        }
        if (at == until || cell != cells - 1 || text[at] == '"' || text[at] == '\0') {
            return -1;
        }
        begins[cells] = at + 1 - from;
        row.stand(text, from);
        return at;
    }

    private boolean isComment(char[] text, int from, int until) {
        int length = comment.length();
        if (length == 0 || length > until - from) {
            return false;
        }
        int i = 0;
        while (i < length && text[from + i] == comment.charAt(i)) {
            i++;
        }
        return i == length;
    }
}
