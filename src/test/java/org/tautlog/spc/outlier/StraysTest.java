package org.tautlog.spc.outlier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

class StraysTest {
    private static final RobustOptions ROBUST = RobustOptions.withDefaults();

    /**
     * Theory: 5 % of normal samples for Grubbs' test and for the generalized ESD that looks for one stray, by construction of
     * the critical values. Looking for three of 30 it is approximate (Rosner, Technometrics 25, 1983): 5.49 % of 1,000,000
     * samples simulated with NumPy and SciPy's t points.
     */
    @Test
    void tests_call_strays_in_normal_samples_as_often_as_stated() {
        int trials = 4000;
        int grubbs = 0;
        int one = 0;
        int three = 0;
        for (int run = 0; run < trials; run++) {
            var sample = Simulated.normal(700_000L + run, 30);
            if (Grubbs.of(sample, 0.05, Grubbs.Side.EITHER).orThrow().rejected()) grubbs++;
            if (GeneralizedEsd.of(sample, 1, 0.05).orThrow().strays() > 0) one++;
            if (GeneralizedEsd.of(sample, 3, 0.05).orThrow().strays() > 0) three++;
        }
        Simulated.assertRate(0.05, grubbs, trials, "Grubbs");
        Simulated.assertRate(0.05, one, trials, "generalized ESD for one stray");
        Simulated.assertRate(0.05494, three, trials, "generalized ESD for three strays");
    }

    /**
     * Simulated with NumPy, the middle of 4,000,000 windows of 21 normal values (1,000,000 of 101): a narrow window flags more
     * than the 0.0027 of three sigma limits, which holds as it grows. Each window stands alone here, as a binomial count asks.
     */
    @ParameterizedTest
    @CsvSource({"10, 3, 20000, 0.01431", "10, 4, 20000, 0.00319", "50, 3, 4000, 0.00454"})
    void a_window_flags_normal_values_as_often_as_simulated_elsewhere(int half, double width, int n, double rate) {
        int flagged = 0;
        for (int run = 0; run < n; run++) {
            var found = HampelWindow.of(Simulated.normal(710_000L + run, 2 * half + 1), half, width, 0)
                    .orThrow();
            if (found.flagged().stream().anyMatch(value -> value.index() == half)) flagged++;
        }
        Simulated.assertRate(rate, flagged, n, "middles of windows flagged");
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
