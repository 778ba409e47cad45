package org.tautlog.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Bending by a head face out of square, at both ends of the formula's range. */
class TiltedHeadTest {
    private static final Bolt BOLT = Joints.longThroughBolt().bolt();
    private static final double TILT_RAD = Math.toRadians(0.5);

    /** Source: elementary bending, sigma = E alpha d / (2 l): a bolt without preload bends evenly. */
    @Test
    void a_slack_bolt_bends_evenly() {
        assertEquals(205_000 * TILT_RAD * 8.2 / (2 * 380), TiltedHead.bendingMPa(BOLT, 0.5, 0), 1e-9);
    }

    /** Source: wires bent at a clamp, 2 alpha sqrt(sigma E), from memory: a taut slender bolt bends under its head. */
    @Test
    void a_taut_bolt_bends_just_under_its_head() {
        var sigmaMPa = 40_000 / (Math.PI / 4 * 8.2 * 8.2);
        assertEquals(2 * TILT_RAD * Math.sqrt(sigmaMPa * 205_000), TiltedHead.bendingMPa(BOLT, 0.5, 40_000), 1e-4);
    }

    /** The slope of a beam in tension, solved in small steps: theta'' = F/(E I) theta, tilt at the head, none at the thread. */
    @Test
    void between_them_it_is_the_beam_in_tension() {
        var preloadN = 1_000.0;
        var bendingNmm2 = 205_000 * Math.PI * Math.pow(8.2, 4) / 64;
        var steps = 200_000;
        var stepMm = 380.0 / steps;
        double slope = 0, bend = 1;
        for (int i = 0; i < steps; i++) {
            var middle = slope + bend * stepMm / 2;
            bend += preloadN / bendingNmm2 * middle * stepMm;
            slope = middle + bend * stepMm / 2;
        }
        var momentNmm = bendingNmm2 * bend / slope * TILT_RAD;
        var stressMPa = momentNmm * 8.2 / 2 / (Math.PI * Math.pow(8.2, 4) / 64);
        assertEquals(stressMPa, TiltedHead.bendingMPa(BOLT, 0.5, preloadN), 1e-5 * stressMPa);
    }

    @Test
    void the_share_of_yield_is_stress_over_yield() {
        assertEquals(TiltedHead.bendingMPa(BOLT, 1, 30_000) / 940, TiltedHead.shareOfYield(BOLT, 1, 30_000), 1e-12);
    }
}
