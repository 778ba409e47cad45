package org.tautlog.intake.table;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;

/** Rows kept as columns of plain numbers, each row made when it is asked for; equal texts are kept once. Never altered. */
public final class CsvRows extends AbstractList<CsvRow> implements RandomAccess {
    private final double[][] numbers;
    private final int[] lines;
    private final List<List<String>> texts;
    private final int[] textAt;
    private final int size;

    private CsvRows(double[][] numbers, int[] lines, List<List<String>> texts, int[] textAt, int size) {
        this.numbers = numbers;
        this.lines = lines;
        this.texts = texts;
        this.textAt = textAt;
        this.size = size;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public CsvRow get(int row) {
        if (row < 0 || row >= size) throw new IndexOutOfBoundsException("row " + row + " of " + size);
        var cells = new Double[numbers.length];
        for (int i = 0; i < cells.length; i++) cells[i] = numbers[i][row];
        return new CsvRow(lines[row], List.of(cells), textAt.length == 0 ? List.of() : texts.get(textAt[row]));
    }

    /**
     * {@return the rows at these places, in this order}
     *
     * @param places places from 0, each below {@link #size()}
     */
    public CsvRows at(int[] places) {
        return new CsvRows(
                Arrays.stream(numbers)
                        .map(column -> Arrays.stream(places)
                                .mapToDouble(i -> column[i])
                                .toArray())
                        .toArray(double[][]::new),
                Arrays.stream(places).map(i -> lines[i]).toArray(),
                texts,
                textAt.length == 0
                        ? textAt
                        : Arrays.stream(places).map(i -> textAt[i]).toArray(),
                places.length);
    }

    /** Rows as they come. */
    static final class Growing {
        private static final int FIRST = 1 << 10;

        private final double[][] numbers;
        private int[] lines = new int[FIRST];
        private final List<List<String>> texts = new ArrayList<>();
        private final Map<List<String>, Integer> known = new HashMap<>();
        private int[] textAt;
        private int size;

        Growing(int numbers, int texts) {
            this.numbers = new double[numbers][FIRST];
            textAt = new int[texts == 0 ? 0 : FIRST];
        }

        int size() {
            return size;
        }

        void add(int line, double[] cells, List<String> said) {
            if (size == lines.length) grow();
            for (int i = 0; i < cells.length; i++) numbers[i][size] = cells[i];
            lines[size] = line;
            if (textAt.length > 0) {
                textAt[size] = known.computeIfAbsent(said, all -> {
                    texts.add(List.copyOf(all));
                    return texts.size() - 1;
                });
            }
            size++;
        }

        private void grow() {
            int more = size + (size >> 1);
            lines = Arrays.copyOf(lines, more);
            if (textAt.length > 0) textAt = Arrays.copyOf(textAt, more);
            for (int i = 0; i < numbers.length; i++) numbers[i] = Arrays.copyOf(numbers[i], more);
        }

        CsvRows rows() {
            return new CsvRows(numbers, lines, List.copyOf(texts), textAt, size);
        }
    }
}
