package org.tautlog.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.tautlog.trace.Curve;

class OutlineTest {
    @Test
    void thinning_keeps_ends_and_spikes() {
        int n = 5000;
        var angle = new double[n];
        var torque = new double[n];
        for (int i = 0; i < n; i++) {
            angle[i] = i * 0.1;
            torque[i] = i * 0.01;
        }
        torque[1234] = 90;
        torque[4321] = -5;
        var signature = MadeShift.named("FW-000001", 360).judgement().signature();
        var thinned = Outline.of(Curve.of(angle, torque), signature).curve();
        assertTrue(thinned.size() <= Outline.MOST_POINTS, "samples: " + thinned.size());
        assertEquals(angle[0], thinned.angleDeg(0));
        assertEquals(angle[n - 1], thinned.angleDeg(thinned.size() - 1));
        var kept = thinned.torquesNm();
        assertEquals(90, Arrays.stream(kept).max().orElseThrow());
        assertEquals(-5, Arrays.stream(kept).min().orElseThrow());
        var angles = thinned.anglesDeg();
        for (int i = 1; i < angles.length; i++) {
            assertTrue(angles[i] > angles[i - 1], "order of samples at " + i);
        }
    }

    @Test
    void a_short_curve_is_left_as_it_is() {
        var curve = Curve.of(new double[] {0, 1, 2}, new double[] {1, 2, 3});
        var signature = MadeShift.named("FW-000001", 360).judgement().signature();
        assertEquals(curve, Outline.of(curve, signature).curve());
    }
}
