package org.tautlog.intake.text;

import java.util.AbstractList;
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
     * Says at once whether this row begins as another one did.
     *
     * @param cell 0-based place of the last cell that counts
     * @param other another row
     * @return true where all cells up to that one are the same; false where they are not, or there is no telling at once
     */
    public abstract boolean beginsAs(int cell, Row other);

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

    /** Cells within their line, each with the blanks around it. */
    static final class Cut extends Row {
        private final String line;
        private final int[] begins;
        private final int size;

        /** Where each cell begins, and behind the last of them where the next one would. */
        Cut(String line, int[] begins, int size) {
            this.line = line;
            this.begins = begins;
            this.size = size;
        }

        @Override
        public int size() {
            return size;
        }

        @Override
        public String get(int cell) {
            int from = from(cell);
            return line.substring(from, until(cell, from));
        }

        @Override
        public boolean isEmpty(int cell) {
            return from(cell) == begins[cell + 1] - 1;
        }

        @Override
        public boolean is(int cell, String text) {
            int from = from(cell);
            int length = text.length();
            return until(cell, from) - from == length && line.regionMatches(from, text, 0, length);
        }

        @Override
        public double number(int cell, NumberForm form) {
            int from = from(cell);
            return form.parse(line, from, until(cell, from));
        }

        @Override
        public boolean beginsAs(int cell, Row other) {
            Objects.checkIndex(cell, size);
            int end = begins[cell + 1] - 1;
            // Two copies are compared many bytes at a time, which parts of two lines are not.
            return other instanceof Cut cut
                    && cell < cut.size
                    && end == cut.begins[cell + 1] - 1
                    && line.substring(0, end).equals(cut.line.substring(0, end));
        }

        private int from(int cell) {
            Objects.checkIndex(cell, size);
            int at = begins[cell];
            int end = begins[cell + 1] - 1;
            while (at < end && isBlank(line.charAt(at))) {
                at++;
            }
            return at;
        }

        private int until(int cell, int from) {
            int end = begins[cell + 1] - 1;
            while (end > from && isBlank(line.charAt(end - 1))) {
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
            return form.parse(text, 0, text.length());
        }

        @Override
        public boolean beginsAs(int cell, Row other) {
            return false;
        }
    }
}
