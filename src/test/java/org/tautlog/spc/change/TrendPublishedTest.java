package org.tautlog.spc.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Autocorrelation;
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

    /** The variance of the score that resemblance of neighbours leaves, against a simulation in NumPy. */
    @Test
    void the_score_of_resembling_neighbours_varies_as_simulated_in_numpy() {
        for (var row : Published.rows("trend_variance_neighbours")) {
            int n = Integer.parseInt(row.get("n"));
            var neighbours = new Autocorrelation(Double.parseDouble(row.get("r")), 0, n);
            var trend = Trend.of(Simulated.normal(n, n), 0.95, neighbours).orThrow();
            assertEquals(
                    Double.parseDouble(row.get("ratio")),
                    trend.inflation(),
                    4 * Double.parseDouble(row.get("error")),
                    row.toString());
        }
    }

    /** Theory: bounds of 95 % hold a slope of 0 in 95 of 100 steady series, also where neighbours resemble each other. */
    @Test
    void the_bounds_of_the_slope_hold_the_truth_where_neighbours_resemble_each_other() {
        int trials = 1000;
        int held = 0;
        int heldByEstimate = 0;
        int heldUnwidened = 0;
        for (int run = 0; run < trials; run++) {
            var x = Simulated.normal(810_000L + run, 150);
            for (int i = 1; i < x.length; i++) x[i] = 0.4 * x[i - 1] + Math.sqrt(1 - 0.16) * x[i];
            var series = Arrays.copyOfRange(x, 50, 150);
            if (holds(series, new Autocorrelation(0.4, 0, 100))) held++;
            if (holds(series, Autocorrelation.ofDifferences(series).orThrow())) heldByEstimate++;
            if (holds(series, Autocorrelation.none())) heldUnwidened++;
        }
        Simulated.assertRate(0.95, held, trials, "bounds that hold the truth");
        assertTrue(heldByEstimate >= 0.92 * trials, heldByEstimate + " of " + trials);
        assertTrue(heldUnwidened < 0.85 * trials, heldUnwidened + " of " + trials + " without widening");
    }

    private static boolean holds(double[] series, Autocorrelation neighbours) {
        return Trend.of(series, 0.95, neighbours).orThrow().slopeBounds().contains(0);
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
