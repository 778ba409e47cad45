package org.tautlog.spc.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Student's two-sided 97.5 % points, which every table of t prints; here 4.303 for 2 degrees of freedom. */
class MeanOfDifferencesPublishedTest {
    @Test
    void bounds_lie_the_tabled_quantile_away() {
        var test = MeanOfDifferences.of(new double[] {1, 2, 3}, 0.95).orThrow();
        assertEquals(2 - 4.303 / Math.sqrt(3), test.bounds().lower(), 5e-4);
        assertEquals(2 + 4.303 / Math.sqrt(3), test.bounds().upper(), 5e-4);
    }
}
