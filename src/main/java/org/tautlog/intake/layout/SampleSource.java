package org.tautlog.intake.layout;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where one quantity of the samples comes from, as a layout states it: a column, or a regular step from 0.
 *
 * @param column the column's header as the file writes it; empty where the quantity rises by a step
 * @param factor how many SI-derived units one of the recording's is; null where the file says it
 * @param sign 1 where tightening counts up in the recording, -1 where it counts down
 * @param step the regular step, in the recording's unit; 0 where a column holds the values
 * @param marks words of a stage column with their stage numbers; empty where it holds whole numbers
 */
public record SampleSource(String column, @Nullable Double factor, int sign, double step, Map<String, Integer> marks) {
    public SampleSource {
        if (column.isEmpty() == (step == 0.0)) {
            throw new IllegalArgumentException("column is '" + column + "', step is " + step
                    + "; samples come either from a column or from a step");
        }
        if (sign != 1 && sign != -1) {
            throw new IllegalArgumentException("sign is " + sign + "; it must be 1 or -1");
        }
        marks = Map.copyOf(marks);
    }
}
