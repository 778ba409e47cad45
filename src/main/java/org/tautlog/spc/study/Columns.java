package org.tautlog.spc.study;

import java.util.stream.IntStream;

/** Which of several columns weighs most. */
final class Columns {
    private Columns() {}

    static int largest(double[] parts) {
        return IntStream.range(0, parts.length)
                .reduce((a, b) -> parts[b] > parts[a] ? b : a)
                .orElse(0);
    }
}
