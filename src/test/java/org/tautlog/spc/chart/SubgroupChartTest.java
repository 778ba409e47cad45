package org.tautlog.spc.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

class SubgroupChartTest {
    private static final SubgroupOptions USUAL = SubgroupOptions.withDefaults();

    /** Theory: subgroups of mixed sizes from one process show its standard deviation whatever tells it. */
    @ParameterizedTest
    @EnumSource(SubgroupSpread.class)
    void unequal_subgroups_tell_the_spread_without_bias(SubgroupSpread spread) {
        var limits = SubgroupChart.phaseOne(
                        unequal(101, 6000), USUAL.withSpread(spread).withPhaseOne(PhaseOneOptions.keepAll()))
                .orThrow()
                .limits();
        assertEquals(1, limits.sigma(), 0.02);
        assertEquals(6000, limits.subgroups());
    }

    /** Theory: 0.0027 a mean; limits from 10,000 subgroups of 2 to 6. */
    @Test
    void means_in_control_signal_as_often_as_theory_says() {
        var limits = SubgroupChart.phaseOne(unequal(102, 10_000), USUAL.withPhaseOne(PhaseOneOptions.keepAll()))
                .orThrow()
                .limits();
        var fresh = unequal(103, 60_000);
        var signals = SubgroupChart.chart(limits, fresh, RunRule.limitsOnly())
                .orThrow()
                .location()
                .signals();
        double theory = 0;
        for (int n = 2; n <= 6; n++)
            theory +=
                    (1 - NormalDistribution.of(0, 1 / Math.sqrt(n)).probability(limits.lower(n), limits.upper(n))) / 5;
        assertEquals(0.0027, theory, 0.0005);
        Simulated.assertRate(theory, signals.size(), fresh.length, "means beyond limits");
    }

    @Test
    void each_size_gets_its_own_limits() {
        var limits = SubgroupChart.phaseOne(unequal(104, 200), USUAL).orThrow().limits();
        var points = SubgroupChart.chart(
                        limits, new double[][] {{0, 1}, {0, 1, 0, 1, 0, 1, 0, 1}}, RunRule.limitsOnly())
                .orThrow()
                .location()
                .points();
        double narrow = points.get(1).upper() - points.get(1).centre();
        assertEquals(2 * narrow, points.get(0).upper() - points.get(0).centre(), 1e-12);
        assertEquals(8, points.get(1).n());
    }

    @Test
    void a_wild_subgroup_is_left_out_and_named() {
        var groups = unequal(105, 60);
        groups[20] = new double[] {9, 9.5, 8.8};
        groups[30] = new double[] {-6, 0, 6};
        var phase = SubgroupChart.phaseOne(groups, USUAL).orThrow();
        var left = phase.removed().stream().map(Removed::index).toList();
        assertTrue(left.contains(20) && left.contains(30), left.toString());
        assertTrue(phase.settled());
        assertTrue(phase.removed().stream().anyMatch(r -> r.kind() == ChartKind.RANGE && r.index() == 30));
    }

    @Test
    void data_that_cannot_be_charted_get_a_reason() {
        assertEquals(
                Optional.of(Reason.EMPTY),
                SubgroupChart.phaseOne(new double[0][], USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                SubgroupChart.phaseOne(new double[][] {{1, 2}}, USUAL).missingFor());
        var single = SubgroupChart.phaseOne(new double[][] {{1, 2}, {3}}, USUAL);
        assertEquals(Optional.of(Reason.TOO_FEW), single.missingFor());
        assertTrue(single.whyMissing().orElseThrow().contains("subgroup 2"));
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                SubgroupChart.phaseOne(new double[][] {{1, 1}, {2, 2}}, USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.NOT_FINITE),
                SubgroupChart.phaseOne(new double[][] {{1, 2}, {2, Double.POSITIVE_INFINITY}}, USUAL)
                        .missingFor());
    }

    private static double[][] unequal(long seed, int subgroups) {
        var sampler = Simulated.normal(seed);
        var groups = new double[subgroups][];
        for (int g = 0; g < subgroups; g++) {
            groups[g] = new double[2 + g % 5];
            for (int i = 0; i < groups[g].length; i++) groups[g][i] = sampler.sample();
        }
        return groups;
    }
}
