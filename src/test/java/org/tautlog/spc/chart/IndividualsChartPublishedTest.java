package org.tautlog.spc.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.tautlog.spc.Published;

/** Source: NIST/SEMATECH e-Handbook 6.3.2.2, flow rate, ten batches. */
class IndividualsChartPublishedTest {
    private static final double[] FLOW = Published.column("nist_6_3_2_2_flowrate", "x");

    @Test
    void limits_of_the_flow_rate_are_those_of_the_handbook() {
        var phase = IndividualsChart.phaseOne(FLOW, IndividualsOptions.withDefaults())
                .orThrow();
        var limits = phase.limits();
        assertEquals(50.81, limits.centre(), 5e-3);
        assertEquals(1.8778, limits.movingRangeCentre(), 5e-5);
        double asPrinted = 3 * limits.movingRangeCentre() / 1.128;
        assertEquals(55.8041, limits.centre() + asPrinted, 5e-5, "with the factor rounded as in the handbook");
        assertEquals(45.8159, limits.centre() - asPrinted, 5e-5, "with the factor rounded as in the handbook");
        assertEquals(55.8041, limits.upper(), 1.8e-3, "with the factor unrounded");
        assertEquals(45.8159, limits.lower(), 1.8e-3, "with the factor unrounded");
        assertEquals(6.1347, limits.movingRangeUpper(), 1.5e-3);
        assertTrue(phase.removed().isEmpty());
        assertTrue(phase.settled());
    }

    @Test
    void no_batch_is_out_of_control() {
        var limits = IndividualsChart.phaseOne(FLOW, IndividualsOptions.withDefaults())
                .orThrow()
                .limits();
        var charts = IndividualsChart.chart(limits, FLOW, RunRule.limitsOnly()).orThrow();
        assertEquals(10, charts.location().points().size());
        assertEquals(9, charts.spread().points().size());
        assertTrue(charts.location().signals().isEmpty());
        assertTrue(charts.spread().signals().isEmpty());
    }
}
