package org.tautlog.spc.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Published;

class SubgroupChartPublishedTest {
    private static final double[][] FLOW_WIDTH = Published.subgroups("montgomery_t6_1_flow_width");
    private static final double[][] RINGS = Published.subgroups("montgomery_pistonrings_phase1_25x5");
    private static final double D2 = ChartConstants.of(5).d2();
    private static final SubgroupOptions USUAL = SubgroupOptions.withDefaults();

    /** Source: Montgomery, example 6.1: 1.5056, 0.32521, limits 1.69325 and 1.31795, 0.68749 with rounded factors. */
    @Test
    void flow_width_has_the_limits_of_the_textbook_by_ranges() {
        var phase = SubgroupChart.phaseOne(FLOW_WIDTH, USUAL).orThrow();
        var limits = phase.limits();
        assertEquals(1.5056, limits.centre(), 5e-5);
        assertEquals(0.1398142734, limits.sigma() * D2 / 2.326, 5e-10, "R rounds d2 to 2.326");
        assertEquals(1.69325, limits.upper(5), 1e-4);
        assertEquals(1.31795, limits.lower(5), 1e-4);
        assertEquals(1.693190932, limits.upper(5), 6e-6);
        assertEquals(1.318029868, limits.lower(5), 6e-6);
        var ranges = SubgroupChart.chart(limits, FLOW_WIDTH, RunRule.limitsOnly())
                .orThrow()
                .spread();
        assertEquals(0.325208, ranges.points().get(0).centre(), 5e-7);
        assertEquals(0.6876424591, ranges.points().get(0).upper(), 1.2e-5);
        assertEquals(0, ranges.points().get(0).lower());
        assertTrue(phase.settled() && phase.removed().isEmpty());
    }

    /** Source: the same data, recomputed in R. */
    @Test
    void flow_width_has_the_limits_of_r_by_deviations() {
        var s = SubgroupChart.phaseOne(FLOW_WIDTH, USUAL.withSpread(SubgroupSpread.STANDARD_DEVIATION))
                .orThrow()
                .limits();
        assertEquals(0.1399538831, s.sigma(), 5e-10);
        assertEquals(1.693378238, s.upper(5), 5e-9);
        assertEquals(1.317842562, s.lower(5), 5e-9);
        var chart = SubgroupChart.chart(s, FLOW_WIDTH, RunRule.limitsOnly())
                .orThrow()
                .spread();
        assertEquals(0.1315546352, chart.points().get(0).centre(), 5e-10);
        assertEquals(0.2748173525, chart.points().get(0).upper(), 5e-9);
        var pooled = SubgroupChart.phaseOne(FLOW_WIDTH, USUAL.withSpread(SubgroupSpread.POOLED))
                .orThrow()
                .limits();
        assertEquals(0.1394250184, pooled.sigma(), 5e-10);
    }

    /** Source: Montgomery, example 6.1 continued: the first mean beyond its limit is sample 43. */
    @Test
    void frozen_limits_find_the_shift_in_new_samples() {
        var limits = SubgroupChart.phaseOne(FLOW_WIDTH, USUAL).orThrow().limits();
        var fresh = Published.subgroups("montgomery_t6_2_flow_width_phase2");
        var charts = SubgroupChart.chart(limits, fresh, RunRule.limitsOnly()).orThrow();
        assertEquals(
                List.of(43, 45),
                charts.location().signals().stream()
                        .map(point -> point.index() + 26)
                        .toList());
        assertEquals(1.6970, charts.location().points().get(17).value(), 5e-5);
        assertTrue(charts.spread().signals().isEmpty());
    }

    /** Source: Montgomery, piston rings: 74.001, 0.023, 74.014 and 73.988, 0.049; more digits recomputed in R. */
    @Test
    void piston_rings_have_the_limits_of_the_textbook() {
        var limits = SubgroupChart.phaseOne(RINGS, USUAL).orThrow().limits();
        assertEquals(74.001176, limits.centre(), 5e-7);
        assertEquals(73.98804799, limits.lower(5), 5e-7);
        assertEquals(74.01430401, limits.upper(5), 5e-7);
        var ranges = SubgroupChart.chart(limits, RINGS, RunRule.limitsOnly())
                .orThrow()
                .spread();
        assertEquals(0.04812533, ranges.points().get(0).upper(), 1e-6);
        assertEquals(0.02276, ranges.points().get(0).centre(), 5e-8);
    }
}
