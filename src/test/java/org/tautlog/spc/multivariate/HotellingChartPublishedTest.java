package org.tautlog.spc.multivariate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Covariance;
import org.tautlog.spc.Published;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;
import org.tautlog.spc.chart.PhaseOneOptions;

class HotellingChartPublishedTest {
    private static final HotellingOptions KEEP =
            HotellingOptions.withDefaults().withPhaseOne(PhaseOneOptions.keepAll());

    /** Source: Ryan (2000), table 9.2; statistics recomputed in R: samples 10 and 20 are out of control. */
    @Test
    void ryans_samples_have_the_statistics_and_limits_of_r() {
        var subgroups = ryan();
        var options = KEEP.withFalseAlarm(1 - 0.9973 * 0.9973);
        var limits =
                HotellingChart.phaseOneOfSubgroups(subgroups, options).orThrow().limits();
        assertEquals(60.375, limits.covariance().mean(0), 1e-12);
        assertEquals(18.4875, limits.covariance().mean(1), 1e-12);
        assertEquals(222.0333333, limits.covariance().at(0, 0), 5e-8);
        assertEquals(103.1166667, limits.covariance().at(0, 1), 5e-8);
        assertEquals(56.57916667, limits.covariance().at(1, 1), 5e-9);
        assertEquals(11.03975666, limits.phaseOneLimit(), 5e-9);
        assertEquals(12.20183631, limits.phaseTwoLimit(), 5e-9);
        var chart = HotellingChart.chart(limits, means(subgroups), HotellingLimits.Phase.ONE)
                .orThrow();
        double[] known = {
            2.241604894, .6526960996, 1.272183838, .2201051309, 1.52793787, 8.981810631, 1.320206407, 3.77355123,
            4.948506838, 63.76042138, 6.550951478, 1.367378328, 1.363226592, 3.25608907, 7.409861434, 2.763835773,
            .1242925781, 1.326543391, 3.503855789, 13.03761715
        };
        for (int i = 0; i < known.length; i++)
            assertEquals(known[i], chart.points().get(i).value(), 1e-8 * known[i] + 1e-10, "sample " + (i + 1));
        assertEquals(
                List.of(10, 20),
                chart.signals().stream().map(p -> p.index() + 1).toList());
    }

    @Test
    void iterative_removal_names_the_samples_out_of_control() {
        var phase = HotellingChart.phaseOneOfSubgroups(ryan(), HotellingOptions.withDefaults())
                .orThrow();
        assertTrue(phase.removed().stream().anyMatch(r -> r.index() == 9 && r.round() == 1));
        assertTrue(phase.settled());
    }

    /** Source: Montgomery, example 11.1: 13.72 and 15.16 at 0.001, first sample 2.16; from memory. */
    @Test
    void textbook_statistic_is_reproduced() {
        var known = Covariance.of(new double[] {115.59, 1.06}, new double[][] {{1.23, .79}, {.79, .83}})
                .orThrow();
        assertEquals(2.16, 10 * known.distanceSquared(new double[] {115.25, 1.04}), 0.005);
    }

    /** The same example: limits for 20 samples of 10 with 2 features at 0.001 rest on those numbers alone. */
    @Test
    void textbook_limits_are_reproduced() {
        var subgroups = new double[20][10][];
        var z = Simulated.normal(398, 400);
        for (int i = 0; i < 200; i++) subgroups[i / 10][i % 10] = new double[] {z[2 * i], z[2 * i + 1]};
        var limits = HotellingChart.phaseOneOfSubgroups(subgroups, KEEP.withFalseAlarm(0.001))
                .orThrow()
                .limits();
        assertEquals(13.72, limits.phaseOneLimit(), 0.005);
        assertEquals(15.16, limits.phaseTwoLimit(), 0.0051);
        assertEquals(13.720742, limits.phaseOneLimit(), 5e-7);
        assertEquals(15.165030, limits.phaseTwoLimit(), 5e-7);
    }

    /** Theory: of means in control the stated share lies above the frozen limit; p 2, 20 samples of 4, 600 studies. */
    @Test
    void means_in_control_signal_as_often_as_theory_says() {
        long signals = 0;
        int studies = 600;
        for (int study = 0; study < studies; study++) {
            var limits = HotellingChart.phaseOneOfSubgroups(pairs(5000 + study, 20), KEEP.withFalseAlarm(0.01))
                    .orThrow()
                    .limits();
            signals += HotellingChart.chart(limits, means(pairs(70_000 + study, 50)), HotellingLimits.Phase.TWO)
                    .orThrow()
                    .signals()
                    .size();
        }
        double points = studies * 50.0;
        assertEquals(0.01, signals / points, 2 * 3.3 * Math.sqrt(0.01 / points), "means of a study share its limits");
    }

    private static double[][][] pairs(long seed, int samples) {
        var z = Simulated.normal(seed, 8 * samples);
        var pairs = new double[samples][4][];
        for (int i = 0; i < 4 * samples; i++)
            pairs[i / 4][i % 4] = new double[] {z[2 * i], z[2 * i] + 0.5 * z[2 * i + 1]};
        return pairs;
    }

    @Test
    void parts_say_which_feature_put_a_point_outside() {
        var known = Covariance.of(new double[] {0, 0, 0}, new double[][] {{1, .9, 0}, {.9, 1, 0}, {0, 0, 1}})
                .orThrow();
        var row = new double[] {2, -2, 1};
        var parts = known.parts(row);
        var without = Covariance.of(new double[] {0, 0}, new double[][] {{1, .9}, {.9, 1}})
                .orThrow();
        assertEquals(known.distanceSquared(row) - without.distanceSquared(new double[] {2, -2}), parts[2], 1e-9);
        assertTrue(parts[0] > 20 * parts[2] && parts[1] > 20 * parts[2]);
    }

    /** Theory: both limits for single items are exact, so 0.0027 of items in control signal; p 3, 60 items, 1000 studies. */
    @Test
    void items_in_control_signal_as_often_as_theory_says() {
        long one = 0;
        long two = 0;
        int studies = 1000;
        for (int study = 0; study < studies; study++) {
            var rows = rows(400 + study, 60);
            var limits = HotellingChart.phaseOne(rows, KEEP).orThrow().limits();
            one += HotellingChart.chart(limits, rows, HotellingLimits.Phase.ONE)
                    .orThrow()
                    .signals()
                    .size();
            two += HotellingChart.chart(limits, rows(90_000 + study, 60), HotellingLimits.Phase.TWO)
                    .orThrow()
                    .signals()
                    .size();
        }
        assertEquals(0.0027, one / 60_000.0, 3.3 * Math.sqrt(0.0027 / 60_000), "phase 1");
        assertEquals(
                0.0027,
                two / 60_000.0,
                2 * 3.3 * Math.sqrt(0.0027 / 60_000),
                "phase 2: items of a study share its limits");
        var many = HotellingChart.phaseOne(rows(399, 5000), KEEP).orThrow().limits();
        double known = ChiSquaredDistribution.of(3).inverseSurvivalProbability(0.0027);
        assertEquals(known, many.phaseTwoLimit(), 0.03);
        assertEquals(known, many.phaseOneLimit(), 0.03);
    }

    @Test
    void data_that_cannot_be_charted_get_a_reason() {
        assertEquals(
                Optional.of(Reason.EMPTY),
                HotellingChart.phaseOne(new double[0][], KEEP).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                HotellingChart.phaseOne(new double[][] {{1, 2}, {2, 3}}, KEEP).missingFor());
        double[][] tied = {{1, 2}, {2, 4}, {3, 6}, {4, 8}, {5, 10}};
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                HotellingChart.phaseOne(tied, KEEP).missingFor());
        double[][] flat = {{1, 0.1}, {2, 0.1}, {3, 0.1}, {4, 0.1}};
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                HotellingChart.phaseOne(flat, KEEP).missingFor());
        assertEquals(
                Optional.of(Reason.UNEQUAL),
                HotellingChart.phaseOne(new double[][] {{1, 2}, {2}}, KEEP).missingFor());
        double[][] holed = {{1, 2}, {Double.NaN, 4}, {3, 7}, {4, 8}};
        assertEquals(
                Optional.of(Reason.NOT_FINITE),
                HotellingChart.phaseOne(holed, KEEP).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                HotellingChart.phaseOneOfSubgroups(new double[][][] {{{1, 2}}}, KEEP)
                        .missingFor());
    }

    private static double[][] rows(long seed, int n) {
        var z = Simulated.normal(seed, 3 * n);
        var rows = new double[n][];
        for (int i = 0; i < n; i++) rows[i] = new double[] {z[3 * i], z[3 * i] + z[3 * i + 1], 100 * z[3 * i + 2]};
        return rows;
    }

    private static double[][][] ryan() {
        var rows = Published.rows("ryan_t9_2_hotelling_20x4x2");
        var subgroups = new double[20][4][];
        for (var row : rows)
            subgroups[Integer.parseInt(row.get("sample")) - 1][Integer.parseInt(row.get("unit")) - 1] =
                    new double[] {Double.parseDouble(row.get("x1")), Double.parseDouble(row.get("x2"))};
        return subgroups;
    }

    private static double[][] means(double[][][] subgroups) {
        var means = new double[subgroups.length][2];
        for (int g = 0; g < means.length; g++)
            for (var row : subgroups[g]) for (int j = 0; j < 2; j++) means[g][j] += row[j] / subgroups[g].length;
        return means;
    }
}
