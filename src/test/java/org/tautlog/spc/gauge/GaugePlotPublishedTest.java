package org.tautlog.spc.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class GaugePlotPublishedTest {
    /** D4 for 2 and 3 trials, AIAG, Measurement Systems Analysis: 3.27 and 2.58 (2.575 where three decimals are printed). */
    @Test
    void the_limit_of_ranges_is_that_of_the_manual() {
        assertEquals(3.27, limit(List.of(1.0, 2.0)), 5e-3);
        assertEquals(2.575, limit(List.of(1.0, 1.5, 2.0)), 1e-3);
    }

    @Test
    void unequal_cells_give_a_reason() {
        var plot = GaugePlot.of(List.of(List.of(List.of(1.0, 2.0), List.of(1.0, 2.0, 3.0))));
        assertTrue(plot.whyMissing().isPresent());
    }

    private static double limit(List<Double> trials) {
        var plot = GaugePlot.of(List.of(List.of(trials, trials), List.of(trials, trials)))
                .found()
                .orElseThrow();
        assertEquals(1, plot.meanRange(), 1e-12);
        return plot.upperRange();
    }
}
