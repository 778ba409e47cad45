package org.tautlog.intake.layout;

import java.util.Map;

/**
 * Where one quantity of the samples comes from in one file.
 *
 * @param column 0-based column; -1 where the quantity rises by a step
 * @param factor from the recording's unit and sign to N·m, deg or s with tightening positive
 * @param step the regular step, in the recording's unit; 0 where a column holds the values
 * @param marks words of a stage column with their stage numbers; empty where it holds whole numbers
 */
public record SampleColumn(int column, double factor, double step, Map<String, Integer> marks) {
    public SampleColumn {
        marks = Map.copyOf(marks);
    }

    /** {@return whether a column holds the values} */
    public boolean isColumn() {
        return column >= 0;
    }
}
