package org.tautlog.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The bound that the study shows lies below what the program reaches, and falls as more is known. */
class OnsetBoundTest {
    @Test
    void knowing_more_bounds_less() {
        double shape = OnsetBound.leastSpreadDeg(200, 3);
        double none = OnsetBound.leastSpreadDeg(200, 5);
        double runOut = OnsetBound.leastSpreadDeg(200, 9);
        assertTrue(shape < none && none < runOut, shape + " " + none + " " + runOut);
    }

    /** No reading without bias can beat it: the program's spread at the same knees is above. */
    @Test
    void the_program_does_not_read_better_than_can_be() {
        var cell = Cell.run(
                Cells.AIMS,
                Generator.FORMULA,
                Conditions.with(c -> {
                    c.leastOnsetDeg = 200;
                    c.mostOnsetDeg = 200;
                    c.leastPrevailingNm = 0;
                    c.mostPrevailingNm = 0;
                }),
                100);
        assertTrue(cell.errors(Quality.ONSET_ANGLE).spread() > OnsetBound.leastSpreadDeg(200, 3));
    }

    /** Source: the normal distribution, 95 % within 1.95996 standard deviations. */
    @Test
    void an_error_without_bias_is_the_normal_one() {
        assertEquals(1.95996, OnsetBound.usual(0, 1), 1e-5);
    }
}
