package org.tautlog.review.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Proportion;

class ErrorTableTest {
    private static final double[] GRID =
            IntStream.rangeClosed(0, 60).mapToDouble(i -> i).toArray();
    private static final double TRUE_THRESHOLD = 23;
    private static final int REPEATS = 400;
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    /** 400 samples of 25 traces, seed 8; the share must not lie surely below the 95 % that the interval claims, nor be all. */
    @Test
    void the_interval_holds_the_true_threshold_as_often_as_it_claims() {
        var noise = ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_SHI_RO_256_PP.create(8));
        int held = 0;
        for (int repeat = 0; repeat < REPEATS; repeat++) {
            var own =
                    IntStream.range(0, 25).mapToDouble(i -> 12 * noise.sample()).toArray();
            var tuned = table(own).tuned(repeat, new int[GRID.length]).orThrow();
            held += tuned.interval().contains(TRUE_THRESHOLD) ? 1 : 0;
        }
        assertTrue(held < REPEATS, "an interval that always holds it claims too little");
        var share = Proportion.of(held, REPEATS, 0.99, Proportion.Method.CLOPPER_PEARSON)
                .orThrow();
        assertTrue(share.bounds().upper() >= ErrorTable.CONFIDENCE, held + " of " + REPEATS);
    }

    @Test
    void the_threshold_of_least_median_error_is_taken_and_traces_not_read_count_as_late() {
        var table = new ErrorTable(new double[] {0.3, 0.4, 0.5}, new double[][] {
            {INFINITE, INFINITE, INFINITE, 1, 1},
            {9, INFINITE, 2, 1, 1},
            {-3, -4, -5, -6, 50}
        });
        var tuned = table.tuned(1, new int[] {7, 8, 9}).orThrow();
        assertEquals(new Standing(0.4, 2, 1.4826, 1, 8), tuned.standing());
        assertFalse(tuned.atEnd());
    }

    @Test
    void what_is_read_on_less_than_half_of_the_traces_has_no_finite_error() {
        var standing = ErrorTable.standing(0.3, new double[] {INFINITE, INFINITE, INFINITE, 1, 1}, 0);
        assertEquals(new Standing(0.3, INFINITE, INFINITE, 3, 0), standing);
        var never = new double[][] {{INFINITE, INFINITE, INFINITE, 1, 1}};
        assertEquals(
                "no threshold reads an onset on half of the traces",
                new ErrorTable(new double[] {0.3}, never)
                        .tuned(1, new int[1])
                        .whyMissing()
                        .orElseThrow());
    }

    @Test
    void four_traces_are_too_few_to_tune_on() {
        assertEquals(
                "4 traces with a measured onset; at least 5 are needed",
                table(new double[4]).tuned(1, new int[GRID.length]).whyMissing().orElseThrow());
    }

    @Test
    void an_interval_over_half_of_what_was_tried_tells_nothing() {
        var wide = table(new double[] {-40, -30, 0, 30, 40})
                .tuned(1, new int[GRID.length])
                .orThrow();
        assertTrue(wide.tellsNothing(), wide.interval().toString());
        var narrow = table(new double[] {-2, -1, 0, 1, 2})
                .tuned(1, new int[GRID.length])
                .orThrow();
        assertFalse(narrow.tellsNothing(), narrow.interval().toString());
    }

    /** Each trace errs by its own amount and by the distance of the threshold from the true one. */
    private static ErrorTable table(double[] own) {
        return new ErrorTable(
                GRID,
                IntStream.range(0, GRID.length)
                        .mapToObj(row -> IntStream.range(0, own.length)
                                .mapToDouble(i -> own[i] + GRID[row] - TRUE_THRESHOLD)
                                .toArray())
                        .toArray(double[][]::new));
    }
}
