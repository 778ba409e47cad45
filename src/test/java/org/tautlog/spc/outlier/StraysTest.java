package org.tautlog.spc.outlier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

class StraysTest {
    private static final RobustOptions ROBUST = RobustOptions.withDefaults();

    /** Theory: 5 % of normal samples, by construction of the critical values. */
    @Test
    void tests_call_strays_in_normal_samples_as_often_as_stated() {
        int trials = 4000;
        int grubbs = 0;
        int esd = 0;
        for (int run = 0; run < trials; run++) {
            var sample = Simulated.normal(700_000L + run, 30);
            if (Grubbs.of(sample, 0.05, Grubbs.Side.EITHER).orThrow().rejected()) grubbs++;
            if (GeneralizedEsd.of(sample, 3, 0.05).orThrow().strays() > 0) esd++;
        }
        Simulated.assertRate(0.05, grubbs, trials, "Grubbs");
        assertEquals(0.05, (double) esd / trials, 0.015, "generalized ESD, approximate by Rosner (1983)");
    }

    /** Theory: 0.0027 as the window grows; 201 values are near it. */
    @Test
    void a_wide_window_flags_normal_values_about_as_often_as_three_sigma_limits() {
        int n = 20_000;
        int flagged = HampelWindow.of(Simulated.normal(701, n), 100, 3, 0)
                .orThrow()
                .flagged()
                .size();
        assertEquals(0.0027, (double) flagged / n, 0.0015);
    }

    /** Simulated with NumPy: 21 values around, four robust deviations, 200,000 normal values: 0.0031; three: 0.0143. */
    @Test
    void a_narrow_window_flags_more_than_its_width_promises() {
        int n = 40_000;
        var values = Simulated.normal(706, n);
        assertEquals(
                0.0031,
                (double) HampelWindow.of(values, 10, 4, 0).orThrow().flagged().size() / n,
                0.0012);
        assertEquals(
                0.0143,
                (double) HampelWindow.of(values, 10, 3, 0).orThrow().flagged().size() / n,
                0.0025);
    }

    /** Theory: chi squared with 3 degrees of freedom; 4,000 items, 1 in 200 flagged. */
    @Test
    void robust_distances_flag_normal_items_as_often_as_stated() {
        var options = new RobustOptions(0.75, 0.005, 50, 1);
        var found = RobustDistance.of(rows(702, 4000), options).orThrow();
        Simulated.assertRate(0.005, found.flagged().size(), 4000, "items flagged");
        assertEquals(1, found.covariance().at(0, 0), 0.1);
        assertEquals(2, found.covariance().at(1, 1), 0.2);
        assertEquals(1, found.covariance().at(0, 1), 0.12);
    }

    @Test
    void a_fifth_of_strays_does_not_hide_itself() {
        var rows = rows(703, 100);
        for (int i = 0; i < 20; i++) rows[i] = new double[] {4 + 0.1 * i % 0.5, -4, 50 * i};
        var found = RobustDistance.of(rows, ROBUST).orThrow();
        for (int i = 0; i < 20; i++) assertTrue(found.flagged().contains(i), "stray " + i);
        assertTrue(found.flagged().size() <= 24, found.flagged().toString());
        assertEquals(
                found,
                RobustDistance.of(rows, ROBUST)
                        .map(again -> found.distances().equals(again.distances()) ? found : again)
                        .orThrow());
    }

    @Test
    void the_features_behind_a_stray_are_named() {
        var rows = rows(704, 200);
        rows[7] = new double[] {2.5, -2.5, 0};
        var found = RobustDistance.of(rows, ROBUST).orThrow();
        var parts = found.parts(rows[7]);
        assertTrue(found.flagged().contains(7));
        assertTrue(Math.min(parts[0], parts[1]) > 10 * parts[2]);
    }

    @Test
    void a_floor_under_the_deviation_keeps_coarse_readings_quiet() {
        double[] coarse = {5, 5, 5, 6, 5, 5, 5, 5, 6, 5};
        assertEquals(2, HampelWindow.of(coarse, 3, 3, 0).orThrow().flagged().size());
        assertEquals(List.of(), HampelWindow.of(coarse, 3, 3, 1).orThrow().flagged());
    }

    @Test
    void data_that_cannot_be_tested_get_a_reason() {
        assertEquals(
                Optional.of(Reason.EMPTY),
                Grubbs.of(new double[0], 0.05, Grubbs.Side.EITHER).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                Grubbs.of(new double[] {1, 2}, 0.05, Grubbs.Side.EITHER).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                Grubbs.of(new double[] {1, 1, 1}, 0.05, Grubbs.Side.EITHER).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                GeneralizedEsd.of(new double[] {1, 2, 3}, 3, 0.05).missingFor());
        assertEquals(
                1,
                GeneralizedEsd.of(new double[] {1, 1, 1, 1, 9}, 2, 0.05)
                        .orThrow()
                        .steps()
                        .size());
        assertEquals(
                Optional.of(Reason.NOT_FINITE),
                HampelWindow.of(new double[] {1, Double.NaN, 2}, 1, 3, 0).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                RobustDistance.of(rows(705, 14), ROBUST).missingFor());
        assertEquals(
                Optional.of(Reason.EMPTY),
                RobustDistance.of(new double[0][], ROBUST).missingFor());
        var flat = new double[40][];
        for (int i = 0; i < 40; i++) flat[i] = new double[] {i, i < 35 ? 0 : 1};
        assertEquals(
                Optional.of(Reason.NO_SPREAD), RobustDistance.of(flat, ROBUST).missingFor());
    }

    private static double[][] rows(long seed, int n) {
        var z = Simulated.normal(seed, 3 * n);
        var rows = new double[n][];
        for (int i = 0; i < n; i++) rows[i] = new double[] {z[3 * i], z[3 * i] + z[3 * i + 1], 100 * z[3 * i + 2]};
        return rows;
    }
}
