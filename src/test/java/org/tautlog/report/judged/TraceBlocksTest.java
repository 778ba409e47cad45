package org.tautlog.report.judged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.trace.Curve;

class TraceBlocksTest {
    private static final Curve RISING = Curve.of(
            IntStream.range(0, 200).mapToDouble(i -> 2.0 * i).toArray(),
            IntStream.range(0, 200).mapToDouble(i -> 0.5 * i).toArray());

    @ParameterizedTest
    @ValueSource(ints = {30, 80, 160})
    void no_line_is_wider_than_the_terminal(int width) {
        var lines = TraceBlocks.lines(RISING, width, 8);
        assertEquals(10, lines.size());
        assertTrue(lines.stream().allMatch(line -> line.length() <= width), String.join("\n", lines));
    }

    @Test
    void the_highest_torque_fills_the_last_column_and_nothing_the_first() {
        var lines = TraceBlocks.lines(RISING, 60, 4);
        assertTrue(lines.get(0).endsWith("█"), lines.get(0));
        assertTrue(lines.get(0).contains("99.5 N·m"), lines.get(0));
        assertEquals(' ', lines.get(2).charAt(12));
        assertTrue(lines.get(5).endsWith("398 deg"), lines.get(5));
    }

    @Test
    void a_curve_of_a_single_sample_is_drawn_too() {
        assertEquals(
                6,
                TraceBlocks.lines(Curve.of(new double[] {0}, new double[] {0}), 40, 4)
                        .size());
    }
}
