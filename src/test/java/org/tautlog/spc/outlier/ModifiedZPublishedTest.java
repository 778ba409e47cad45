package org.tautlog.spc.outlier;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Published;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

/** Source: formula of Iglewicz and Hoaglin (1993) on the handbook's data, recomputed in R. */
class ModifiedZPublishedTest {
    @Test
    void one_uranium_measurement_stands_out() {
        var z = ModifiedZ.of(Published.column("nist_uranium_8", "x"), ModifiedZ.USUAL_LIMIT)
                .orThrow();
        assertEquals(201.37, z.median(), 1e-9);
        assertEquals(0.995, z.medianDeviation(), 1e-9);
        assertEquals(29.962714, z.scores().get(7), 1e-5);
        assertEquals(List.of(7), z.flagged());
    }

    @Test
    void three_of_rosners_values_stand_out() {
        var z = ModifiedZ.of(Published.column("rosner_1983_54", "x"), ModifiedZ.USUAL_LIMIT)
                .orThrow();
        assertEquals(2.095, z.median(), 1e-9);
        assertEquals(0.545, z.medianDeviation(), 1e-9);
        assertEquals(List.of(51, 52, 53), z.flagged());
        assertEquals(4.0161, z.scores().get(51), 5e-5);
        assertEquals(4.8453, z.scores().get(53), 5e-5);
    }

    @Test
    void none_of_the_venus_measurements_stands_out() {
        var z = ModifiedZ.of(Published.column("nist_tietjen_venus_15", "x"), ModifiedZ.USUAL_LIMIT)
                .orThrow();
        assertEquals(-3.2826, z.scores().get(0), 5e-5);
        assertEquals(List.of(), z.flagged());
    }

    /** Theory: 2 (1 - F(3.5)) = 4.65e-4 for normal values as the median and its deviation settle. */
    @Test
    void normal_values_are_flagged_as_often_as_theory_says() {
        var z = ModifiedZ.of(Simulated.normal(21, 400_000), ModifiedZ.USUAL_LIMIT)
                .orThrow();
        Simulated.assertRate(4.6526e-4, z.flagged().size(), z.n(), "modified z beyond 3.5");
    }

    @Test
    void data_without_a_scale_get_a_reason() {
        assertEquals(Optional.of(Reason.EMPTY), ModifiedZ.of(new double[0], 3.5).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                ModifiedZ.of(new double[] {1, 2}, 3.5).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                ModifiedZ.of(new double[] {1, 1, 1, 1, 7}, 3.5).missingFor());
    }
}
