package org.tautlog.spc.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

class IndividualsChartTest {
    private static final IndividualsOptions USUAL = IndividualsOptions.withDefaults();

    /** Theory: 2 (1 - F(3)) = 0.0027 a point with known limits; here from 20,000 values. */
    @ParameterizedTest
    @EnumSource(IndividualsSpread.class)
    void in_control_values_signal_as_often_as_theory_says(IndividualsSpread spread) {
        var limits = IndividualsChart.phaseOne(
                        Simulated.normal(11, 20_000), USUAL.withSpread(spread).withPhaseOne(PhaseOneOptions.keepAll()))
                .orThrow()
                .limits();
        var fresh = Simulated.normal(12, 100_000);
        long signals = IndividualsChart.chart(limits, fresh, RunRule.limitsOnly())
                .orThrow()
                .location()
                .signals()
                .size();
        double known = 2
                * org.apache.commons.statistics.distribution.NormalDistribution.of(limits.centre(), limits.sigma())
                        .survivalProbability(limits.upper());
        assertEquals(0.0027, known, 1e-5);
        double actual = 1
                - org.apache.commons.statistics.distribution.NormalDistribution.of(0, 1)
                        .probability(limits.lower(), limits.upper());
        Simulated.assertRate(actual, signals, fresh.length, "points beyond limits");
        assertEquals(0.0027, actual, 0.0006, "limits from 20,000 values lie near the known ones");
    }

    /** Source: Champ and Woodall, Technometrics 29 (1987): all four Western Electric rules, average run length 91.75. */
    @Test
    void the_western_electric_rules_together_run_as_long_as_published() {
        var sampler = Simulated.normal(13);
        long points = 0;
        int runs = 4000;
        double squares = 0;
        for (int run = 0; run < runs; run++) {
            var watch = new RunRuleWatch(RunRule.westernElectric());
            int length = 1;
            while (watch.next(sampler.sample()).isEmpty()) length++;
            points += length;
            squares += (double) length * length;
        }
        double mean = (double) points / runs;
        double error = Math.sqrt((squares / runs - mean * mean) / runs);
        assertEquals(91.75, mean, 3.3 * error);
    }

    @Test
    void a_stray_is_left_out_and_named() {
        var values = Simulated.normal(14, 100);
        values[40] = 9;
        var phase = IndividualsChart.phaseOne(values, USUAL).orThrow();
        assertEquals(40, phase.removed().get(0).index());
        assertEquals(9, phase.removed().get(0).value());
        assertEquals(1, phase.removed().get(0).round());
        assertTrue(!phase.kept().get(40));
        assertEquals(100 - phase.removed().size(), phase.limits().n());
        assertTrue(phase.said().contains("left out"), phase.said());
    }

    @Test
    void a_process_with_a_third_of_its_points_outside_is_not_trimmed_into_control() {
        var values = new double[60];
        for (int i = 0; i < values.length; i++) values[i] = i < 40 ? i % 2 * 0.1 : 10 + i % 2 * 0.1;
        var phase = IndividualsChart.phaseOne(values, USUAL.withNeighbours(IndividualsOptions.Neighbours.IGNORE))
                .orThrow();
        assertTrue(!phase.settled(), phase.said());
    }

    @Test
    void values_that_resemble_their_neighbours_get_wider_limits() {
        var noise = Simulated.normal(15, 5000);
        for (int i = 1; i < noise.length; i++) noise[i] += 0.6 * noise[i - 1];
        double sd = 1 / Math.sqrt(1 - 0.36);
        var all = USUAL.withPhaseOne(PhaseOneOptions.keepAll());
        var wide = IndividualsChart.phaseOne(noise, all).orThrow().limits();
        var narrow = IndividualsChart.phaseOne(noise, all.withNeighbours(IndividualsOptions.Neighbours.IGNORE))
                .orThrow()
                .limits();
        assertEquals(0.6, wide.neighbours().lagOne(), 0.05);
        assertEquals(sd, wide.sigma(), 0.05, "the widened sigma is the process's own");
        assertEquals(sd * Math.sqrt(0.4), narrow.sigma(), 0.05, "the moving range alone understates it");
    }

    @Test
    void a_jump_does_not_widen_the_limits_that_should_show_it() {
        var values = Simulated.normal(17, 60);
        for (int i = 40; i < 60; i++) values[i] += 6;
        var limits = IndividualsChart.phaseOne(values, USUAL.withPhaseOne(PhaseOneOptions.keepAll()))
                .orThrow()
                .limits();
        assertEquals(0, limits.neighbours().allowed());
        assertTrue(IndividualsChart.chart(limits, values, RunRule.limitsOnly())
                        .orThrow()
                        .location()
                        .signals()
                        .size()
                > 3);
    }

    @Test
    void data_that_cannot_be_charted_get_a_reason() {
        assertEquals(
                Optional.of(Reason.EMPTY),
                IndividualsChart.phaseOne(new double[0], USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                IndividualsChart.phaseOne(new double[] {1, 2}, USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                IndividualsChart.phaseOne(new double[] {0.1, 0.1, 0.1, 0.1}, USUAL)
                        .missingFor());
        var rounded = IndividualsChart.phaseOne(new double[] {0.1 + 0.2, 0.3, 0.3, 0.3}, USUAL);
        assertEquals(Optional.of(Reason.NO_SPREAD), rounded.missingFor());
        assertTrue(rounded.whyMissing().orElseThrow().contains("but for rounding"));
        var withNaN = IndividualsChart.phaseOne(new double[] {1, Double.NaN, 2, 3}, USUAL);
        assertEquals(Optional.of(Reason.NOT_FINITE), withNaN.missingFor());
        assertTrue(withNaN.whyMissing().orElseThrow().startsWith("value 2 of 4 is NaN"));
        double[] repeats = {5, 5, 5, 5, 5, 5, 9};
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                IndividualsChart.phaseOne(repeats, USUAL.withSpread(IndividualsSpread.MEDIAN_DEVIATION))
                        .missingFor());
        assertEquals(
                Optional.of(Reason.NOT_FINITE),
                IndividualsChart.phaseOne(new double[] {1e200, -1e200, 0}, USUAL)
                        .missingFor());
    }

    @Test
    void one_new_value_can_be_held_against_frozen_limits() {
        var limits = IndividualsChart.phaseOne(Simulated.normal(16, 50), USUAL)
                .orThrow()
                .limits();
        var charts = IndividualsChart.chart(limits, new double[] {12}, RunRule.nelson())
                .orThrow();
        assertEquals(1, charts.location().signals().size());
        assertEquals(0, charts.spread().points().size());
        assertTrue(Arrays.asList(RunRule.BEYOND_LIMITS)
                .containsAll(charts.location().points().get(0).broken()));
    }
}
