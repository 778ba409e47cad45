package org.tautlog.intake.table;

import java.util.List;

/**
 * The cells asked for of one row.
 *
 * @param line 1-based line in the file
 * @param numbers the cells of the columns of numbers, in the order asked for; finite
 * @param texts the cells of the columns of text, in the order asked for
 */
public record CsvRow(int line, List<Double> numbers, List<String> texts) {
    public CsvRow {
        numbers = List.copyOf(numbers);
        texts = List.copyOf(texts);
    }
}
