package org.tautlog.spc.count;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Published;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.chart.RunRule;

class CountChartPublishedTest {
    private static final CountOptions KEEP = CountOptions.withDefaults().withPhaseOne(PhaseOneOptions.keepAll());

    /** Source: NIST/SEMATECH e-Handbook 6.3.3.2 and Montgomery table 7.1: mean 0.2313, limits 0.4102 and 0.0524. */
    @Test
    void wafers_that_do_not_conform_have_the_limits_of_the_handbook() {
        var counts = Published.column("nist_6_3_3_2_wafer_p_n50", "d");
        var amounts = Published.column("nist_6_3_3_2_wafer_p_n50", "n");
        var chart = draw(CountModel.FRACTION, counts, amounts);
        assertEquals(0.2313, chart.points().get(0).centre(), 5e-5);
        assertEquals(0.4102, chart.points().get(0).upper(), 5e-5);
        assertEquals(0.0524, chart.points().get(0).lower(), 5e-5);
        assertEquals(0.4102391186, chart.points().get(0).upper(), 5e-11);
        assertEquals(List.of(15, 23), signals(chart));
        var np = draw(CountModel.NUMBER, counts, amounts);
        assertEquals(11.56666667, np.points().get(0).centre(), 5e-9);
        assertEquals(20.51195593, np.points().get(0).upper(), 5e-9);
        assertEquals(2.621377404, np.points().get(0).lower(), 5e-10);
        assertEquals(List.of(15, 23), signals(np));
    }

    /** Source: NIST/SEMATECH e-Handbook 6.3.3.1: mean 16, limits 28 and 4; a point on the limit is not beyond it. */
    @Test
    void faults_on_wafers_have_the_limits_of_the_handbook() {
        var counts = Published.column("nist_6_3_3_1_wafer_c", "c");
        var chart = draw(CountModel.FAULTS, counts, ones(counts.length));
        assertEquals(16, chart.points().get(0).centre(), 1e-12);
        assertEquals(28, chart.points().get(0).upper(), 1e-12);
        assertEquals(4, chart.points().get(0).lower(), 1e-12);
        assertEquals(List.of(24), signals(chart));
    }

    /** Source: Montgomery, example 7.3, circuit boards: 19.85, 33.22, 6.48; the book rounds the mean first. */
    @Test
    void faults_on_circuit_boards_have_the_limits_of_the_textbook() {
        var counts = Published.column("montgomery_circuit_c_26", "c");
        var chart = draw(CountModel.FAULTS, counts, ones(counts.length));
        assertEquals(19.85, chart.points().get(0).centre(), 0.005);
        assertEquals(33.22, chart.points().get(0).upper(), 0.01);
        assertEquals(6.48, chart.points().get(0).lower(), 0.005);
        assertEquals(List.of(6, 20), signals(chart));
    }

    private static Chart draw(CountModel model, double[] counts, double[] amounts) {
        var limits = CountChart.phaseOne(model, counts, amounts, KEEP).orThrow().limits();
        return CountChart.chart(limits, counts, amounts, RunRule.limitsOnly()).orThrow();
    }

    private static List<Integer> signals(Chart chart) {
        return chart.signals().stream().map(point -> point.index() + 1).toList();
    }

    private static double[] ones(int n) {
        var ones = new double[n];
        Arrays.fill(ones, 1);
        return ones;
    }
}
