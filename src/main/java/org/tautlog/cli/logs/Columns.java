package org.tautlog.cli.logs;

import java.util.ArrayList;
import java.util.List;

/** Cells set in columns for a terminal: words to the left, numbers to the right. */
final class Columns {
    /** Blanks between two columns. */
    static final int GAP = 2;

    private final List<Integer> widths = new ArrayList<>();
    private final int firstNumber;
    private final int lastNumber;

    Columns(List<String> heads, int firstNumber, int lastNumber) {
        heads.forEach(head -> widths.add(head.length()));
        this.firstNumber = firstNumber;
        this.lastNumber = lastNumber;
    }

    /** Widens the columns where a row needs it. */
    void fit(List<String> row) {
        for (int column = 0; column < widths.size(); column++) {
            widths.set(column, Math.max(widths.get(column), row.get(column).length()));
        }
    }

    int width(int column) {
        return widths.get(column);
    }

    String line(List<String> row) {
        var line = new StringBuilder();
        for (int column = 0; column < widths.size(); column++) {
            var cell = row.get(column);
            var blanks = " ".repeat(widths.get(column) - cell.length());
            line.append(column >= firstNumber && column <= lastNumber ? blanks + cell : cell + blanks)
                    .append(" ".repeat(GAP));
        }
        return line.toString().stripTrailing();
    }
}
