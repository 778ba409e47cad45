package org.tautlog.intake.text;

import java.util.AbstractList;
import java.util.List;
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
     * What stands before the end of a cell: where it is the same in two rows of a table, so are their cells that far.
     *
     * @param cell 0-based place of the cell
     * @return the text
     */
    public abstract String upTo(int cell);

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

    /** Cells within their line: each from a place on until another. */
    static final class Cut extends Row {
        private final String line;
        private final int[] places;
        private final int size;

        Cut(String line, int[] places, int size) {
            this.line = line;
            this.places = places;
            this.size = size;
        }

        @Override
        public int size() {
            return size;
        }

        @Override
        public String get(int cell) {
            checkIndex(cell);
            return line.substring(places[2 * cell], places[2 * cell + 1]);
        }

        @Override
        public boolean isEmpty(int cell) {
            checkIndex(cell);
            return places[2 * cell] == places[2 * cell + 1];
        }

        @Override
        public boolean is(int cell, String text) {
            checkIndex(cell);
            int length = text.length();
            return places[2 * cell + 1] - places[2 * cell] == length
                    && line.regionMatches(places[2 * cell], text, 0, length);
        }

        @Override
        public double number(int cell, NumberForm form) {
            checkIndex(cell);
            return form.parse(line, places[2 * cell], places[2 * cell + 1]);
        }

        @Override
        public String upTo(int cell) {
            checkIndex(cell);
            return line.substring(0, places[2 * cell + 1]);
        }

        /** The places may be more than the cells. */
        private void checkIndex(int cell) {
            if (cell < 0 || cell >= size) {
                throw new IndexOutOfBoundsException("cell " + cell + " of " + size);
            }
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
        public String upTo(int cell) {
            return String.join("\0", cells.subList(0, cell + 1));
        }
    }
}
