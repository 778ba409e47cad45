package org.tautlog.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CurveTest {
    @Test
    void a_curve_is_not_changed_through_the_arrays_it_came_from_or_gave_out() {
        var angle = new double[] {0, 1, 2};
        var torque = new double[] {0, 5, 9};
        var curve = Curve.of(angle, torque);
        angle[1] = 99;
        curve.torquesNm()[2] = 99;
        assertEquals(1, curve.angleDeg(1));
        assertEquals(9, curve.torqueNm(2));
    }

    @Test
    void a_sample_that_is_not_a_number_is_refused_by_its_place() {
        var refusal = assertThrows(
                IllegalArgumentException.class, () -> Curve.of(new double[] {0, 1}, new double[] {0, Double.NaN}));
        assertTrue(refusal.getMessage().contains("torqueNm of sample 2"), refusal.getMessage());
    }

    @Test
    void lists_of_unequal_length_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> Curve.of(new double[] {0, 1}, new double[] {0}));
        var curve = Curve.of(new double[] {0, 1}, new double[] {0, 1});
        assertThrows(IllegalArgumentException.class, () -> curve.withTimeS(new double[] {0}));
        assertThrows(IllegalArgumentException.class, () -> curve.withStages(new int[] {1, 2, 2}));
        assertThrows(IllegalArgumentException.class, () -> Curve.of(new double[0], new double[0]));
    }

    @Test
    void times_and_stages_are_there_only_where_recorded() {
        var bare = Curve.of(new double[] {0, 1}, new double[] {0, 1});
        assertThrows(IllegalStateException.class, () -> bare.timeS(0));
        assertThrows(IllegalStateException.class, () -> bare.stage(0));
        var full = bare.withTimeS(new double[] {0, 0.1}).withStages(new int[] {1, 2});
        assertEquals(0.1, full.timeS(1));
        assertEquals(2, full.stage(1));
        assertNotEquals(bare, full);
    }
}
