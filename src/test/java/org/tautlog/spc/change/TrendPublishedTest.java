package org.tautlog.spc.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Published;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

class TrendPublishedTest {
    private static final double[] NILE = Published.column("nile", "flow");

    /** Source: R, package trend, on the annual flow of the Nile. */
    @Test
    void the_nile_drifts_as_r_says() {
        var trend = Trend.of(NILE, 0.95).orThrow();
        assertEquals(-1387, trend.score());
        assertEquals(112728.333333, trend.variance(), 5e-7);
        assertEquals(-4.12806652284, trend.z(), 5e-12);
        assertEquals(3.65826e-05, trend.pValue(), 5e-11);
        assertEquals(-0.280741335, trend.tau(), 5e-10);
        assertEquals(-2.6, trend.slope(), 1e-12);
        assertEquals(-3.62790697674, trend.slopeBounds().lower(), 5e-12);
        assertEquals(-1.42857142857, trend.slopeBounds().upper(), 5e-12);
    }

    /** Source: R, package trend. */
    @Test
    void the_nile_changed_by_ranks_where_it_changed_by_means() {
        var change = Pettitt.of(NILE).orThrow();
        assertEquals(1617, change.statistic());
        assertEquals(28, change.index());
        assertEquals(3.5910222e-07, change.pValue(), 5e-15);
    }

    /** Theory: the score of a steady series is nearly normal: 5 % beyond 1.96; the bounds hold a slope of 0 as often. */
    @Test
    void steady_series_are_called_drifting_as_often_as_stated() {
        int trials = 4000;
        int called = 0;
        int held = 0;
        for (int run = 0; run < trials; run++) {
            var trend = Trend.of(Simulated.normal(800_000L + run, 40), 0.95).orThrow();
            if (trend.pValue() < 0.05) called++;
            if (trend.slopeBounds().contains(0)) held++;
        }
        assertEquals(0.05, (double) called / trials, 0.012);
        assertEquals(0.95, (double) held / trials, 0.012);
    }

    @Test
    void series_that_cannot_be_tested_get_a_reason() {
        assertEquals(Optional.of(Reason.EMPTY), Trend.of(new double[0], 0.95).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW), Trend.of(new double[] {1, 2}, 0.95).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                Trend.of(new double[] {1, 1, 1, 1}, 0.95).missingFor());
        assertEquals(
                Optional.of(Reason.OUT_OF_DOMAIN),
                Trend.of(new double[6000], 0.95).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW), Pettitt.of(new double[] {1, 2}).missingFor());
        assertTrue(Trend.of(new double[] {1, 2, 3, 4}, 0.95).orThrow().slope() == 1);
    }
}
