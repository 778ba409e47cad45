package org.tautlog.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The evaluation of ISO 16047 (formulas from memory); no worked numbers of the standard were at hand. */
class FrictionTestTest {
    private static final MetricThread M10 = MetricThread.of("M10x1.5");

    /** Torque from mu 0.12 in both places by Motosh's terms with d2 = 9.026 mm, then evaluated: computed from the formulas, no outside source. */
    @Test
    void friction_comes_back_as_it_went_in() {
        var reading = new FrictionTest(M10, 12.815, 29_600, 48.335972, 25.576533);
        assertEquals(0.12003266, reading.totalMu(), 5e-6);
        assertEquals(0.1200729, reading.threadMu(), 1e-5);
        assertEquals(0.12, reading.underHeadMu(), 1e-6);
    }

    /** The nut factor from its definition: 48.336 N·m over 29.6 kN times 10 mm. */
    @Test
    void the_nut_factor_lumps_everything() {
        assertEquals(0.1632972, new FrictionTest(M10, 12.815, 29_600, 48.335972, 25.576533).nutFactor(), 1e-6);
    }
}
