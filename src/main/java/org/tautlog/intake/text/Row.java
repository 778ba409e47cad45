package org.tautlog.intake.text;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * The cells of one line. Of most rows only the numbers are wanted and whether a key is the same, so a cell that was cut
 * from a line becomes a text of its own only when it is asked for.
 */
public abstract sealed class Row extends AbstractList<String> implements RandomAccess {
    private Row() {}

    /**
     * Cells that are texts already.
     *
     * @param cells the cells
     * @return a view of them
     */
    public static Row of(List<String> cells) {
        return new Made(cells);
    }

    /** {@return no cells: of a line that cannot be cut} */
    public static Row none() {
        return of(List.of());
    }

    /**
     * Says whether a cell is empty.
     *
     * @param cell 0-based place of the cell
     * @return whether it holds nothing
     */
    public abstract boolean isEmpty(int cell);

    /**
     * Says whether a cell is a text.
     *
     * @param cell 0-based place of the cell
     * @param text the text
     * @return whether the cell holds just that
     */
    public abstract boolean is(int cell, String text);

    /**
     * Reads a cell as a number.
     *
     * @param cell 0-based place of the cell
     * @param form how numbers are written
     * @return the number, finite; NaN where the cell is none
     */
    public abstract double number(int cell, NumberForm form);

    /**
     * Says whether these are the cells of another row.
     *
     * @param cells the cells of the other
     * @return whether all are the same
     */
    public boolean isSame(List<String> cells) {
        boolean same = size() == cells.size();
        for (int i = 0; same && i < cells.size(); i++) {
            same = is(i, cells.get(i));
        }
        return same;
    }

    /** Cells within a text, each with the blanks around it. */
    static final class Cut extends Row {
        private final int[] begins;
        private final int size;
        private char[] text;
        private int start;

        /** Where each cell begins, and behind the last of them where the next one would, counted from the start of the row. */
        Cut(char[] text, int[] begins, int size) {
            this.text = text;
            this.begins = begins;
            this.size = size;
        }

        /** Lets this be the row that starts at another place. */
        void stand(char[] within, int from) {
            text = within;
            start = from;
        }

        /** The text up to where a cell begins. */
        char[] head(int cell) {
            return Arrays.copyOfRange(text, start, start + begins[cell]);
        }

        /** Where the cells up to one begin. */
        int[] begins(int cell) {
            return Arrays.copyOf(begins, cell + 1);
        }

        @Override
        public int size() {
            return size;
        }

        @Override
        public String get(int cell) {
            int from = from(cell);
            return new String(text, from, until(cell, from) - from);
        }

        @Override
        public boolean isEmpty(int cell) {
            return from(cell) == end(cell);
        }

        @Override
        public boolean is(int cell, String other) {
            int from = from(cell);
            int length = other.length();
            if (until(cell, from) - from != length) {
                return false;
            }
            int i = 0;
            while (i < length && text[from + i] == other.charAt(i)) {
                i++;
            }
            return i == length;
        }

        @Override
        public double number(int cell, NumberForm form) {
            int from = from(cell);
            return form.parse(text, from, until(cell, from));
        }

        private int end(int cell) {
            return start + begins[cell + 1] - 1;
        }

        private int from(int cell) {
            Objects.checkIndex(cell, size);
            int at = start + begins[cell];
            int end = end(cell);
            while (at < end && isBlank(text[at])) {
                at++;
            }
            return at;
        }

        private int until(int cell, int from) {
            int end = end(cell);
            while (end > from && isBlank(text[end - 1])) {
                end--;
            }
            return end;
        }

        /** Between the blank and the end of ASCII there is none. */
        private static boolean isBlank(char c) {
            return (c <= ' ' || c > '~') && Character.isWhitespace(c);
        }
    }

    private static final class Made extends Row {
        private final List<String> cells;

        Made(List<String> cells) {
            this.cells = cells;
        }

        @Override
        public int size() {
            return cells.size();
        }

        @Override
        public String get(int cell) {
            return cells.get(cell);
        }

        @Override
        public boolean isEmpty(int cell) {
            return cells.get(cell).isEmpty();
        }

        @Override
        public boolean is(int cell, String text) {
            return cells.get(cell).equals(text);
        }

        @Override
        public double number(int cell, NumberForm form) {
            var text = cells.get(cell);
            return form.parse(text.toCharArray(), 0, text.length());
        }
    }
}
