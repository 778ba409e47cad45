package org.tautlog.spc.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Reason;

class MedianShiftTest {
    @Test
    void bounds_hold_the_true_shift_about_as_often_as_they_say() {
        var random = new SplittableRandom(3);
        int held = 0;
        for (int round = 0; round < 1000; round++) {
            var shift = MedianShift.of(normal(random, 40, 0), normal(random, 60, 1), 0.95)
                    .orThrow();
            held += shift.bounds().contains(1) ? 1 : 0;
        }
        assertTrue(held >= 930 && held <= 990, "held " + held + " of 1000");
    }

    @Test
    void strays_hardly_move_it() {
        var random = new SplittableRandom(4);
        var before = normal(random, 50, 0);
        var after = normal(random, 50, 0);
        double calm = MedianShift.of(before, after, 0.95).orThrow().shift();
        after[7] = 1e6;
        assertEquals(calm, MedianShift.of(before, after, 0.95).orThrow().shift(), 0.2);
    }

    @Test
    void few_or_equal_values_give_a_reason() {
        assertEquals(
                Reason.TOO_FEW,
                MedianShift.of(new double[9], new double[20], 0.95).missingFor().orElseThrow());
        assertEquals(
                Reason.NO_SPREAD,
                MedianShift.of(new double[20], new double[20], 0.95)
                        .missingFor()
                        .orElseThrow());
    }

    private static double[] normal(SplittableRandom random, int n, double mean) {
        return IntStream.range(0, n)
                .mapToDouble(i -> mean + random.nextGaussian())
                .toArray();
    }
}
