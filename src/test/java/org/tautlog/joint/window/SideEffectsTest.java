package org.tautlog.joint.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.tautlog.joint.Joints;

class SideEffectsTest {
    /** Bending of a taut bolt, 2 alpha sqrt(sigma E), as for wires bent at a clamp: from memory; 0.1 deg, 40 kN on 8.2 mm. */
    @Test
    void a_tenth_of_a_degree_bends_a_taut_bolt_by_a_few_percent_of_yield() {
        var side = SideEffects.of(Joints.longThroughBolt(), 40_000, 0);
        double tensileMPa = 40_000 / (Math.PI / 4 * 8.2 * 8.2);
        assertEquals(2 * Math.toRadians(0.1) * Math.sqrt(tensileMPa * 205_000), side.bendingMPa(), 0.01);
        assertEquals(side.bendingMPa() / 940, side.bendingShareOfYield(), 1e-12);
    }

    /** VDI 2230-1:2015 table 5, from memory: thread 3, two faces of 3, no joint within one layer, in micrometres. */
    @Test
    void flattening_takes_clamp_load_by_the_joints_resilience() {
        var joint = Joints.longThroughBolt();
        var side = SideEffects.of(joint, 40_000, 0.011);
        assertEquals(0.009, side.guideFlatteningMm(), 1e-12);
        assertEquals(0.009 / joint.resilienceMmPerN(), side.guideLossN(), 1e-9);
        assertEquals(0.011 / joint.resilienceMmPerN(), side.statedLossN(), 1e-9);
    }
}
