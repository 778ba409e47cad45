package org.tautlog.spc.capability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShapePlotPublishedTest {
    /** The median of the i-th of n ordered uniform values is that of a beta distribution; Commons Statistics computes it. */
    @ParameterizedTest
    @ValueSource(ints = {2, 5, 10, 50, 1000})
    void ranks_are_the_medians_of_ordered_values(int n) {
        for (int i = 1; i <= n; i++) {
            double median = BetaDistribution.of(i, n - i + 1).inverseCumulativeProbability(0.5);
            double tolerance = i == 1 || i == n ? 1e-9 : 6e-4;
            assertEquals(median, ShapePlot.medianRank(i, n), tolerance, i + " of " + n);
        }
    }

    /** ISO 22514-2: the reference interval of a normal process reaches three standard deviations to either side. */
    @Test
    void the_reference_interval_of_normal_values_is_six_deviations_wide() {
        var values = new Random(1).doubles(200, 99, 101).toArray();
        var plot = ShapePlot.of(values, Shape.NORMAL, java.util.List.of()).orThrow();
        var sample = org.tautlog.spc.Sample.derived(values);
        var reference = assertNotNullInterval(plot);
        assertEquals(sample.mean() - 3 * sample.sd(), reference.lower(), 2e-3 * sample.sd());
        assertEquals(sample.mean() + 3 * sample.sd(), reference.upper(), 2e-3 * sample.sd());
        assertEquals(
                1, plot.steps().stream().mapToDouble(ShapePlot.Point::y).sum(), 1e-12, "every value is in one step");
        assertTrue(plot.steps().stream().allMatch(step -> step.y() >= 0));
    }

    @Test
    void where_no_shape_holds_there_is_neither_line_nor_interval() {
        var plot = ShapePlot.of(new double[] {1, 1, 9, 9, 1}, Shape.EMPIRICAL, java.util.List.of())
                .found()
                .orElseThrow();
        assertNull(plot.reference());
        assertTrue(plot.line().isEmpty() && plot.expected().isEmpty());
    }

    /** Two humps eight deviations apart: steps by the quartiles alone would be as wide as the gap between them. */
    @Test
    void steps_show_the_gap_between_two_humps() {
        var random = new Random(2);
        var values = new double[200];
        for (int i = 0; i < values.length; i++) values[i] = random.nextGaussian() + (i % 2 == 0 ? 0 : 8);
        var steps = ShapePlot.of(values, Shape.EMPIRICAL, java.util.List.of())
                .orThrow()
                .steps();
        assertTrue(steps.size() >= 10, steps.toString());
        assertTrue(steps.stream().anyMatch(step -> step.y() == 0), steps.toString());
    }

    private static org.tautlog.spc.Interval assertNotNullInterval(ShapePlot plot) {
        assertNotNull(plot.reference());
        return plot.reference();
    }
}
