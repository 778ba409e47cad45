package org.tautlog.spc.capability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Proportion;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

/** What a capability study makes of strays, of neighbours alike and of values that no shape fits. */
class StraysAndNeighboursTest {
    private static final CapabilityOptions USUAL = CapabilityOptions.withDefaults();

    @Test
    void one_stray_puts_the_process_out_of_control_and_leaves_the_indices_standing() {
        var values = Simulated.normal(53, 200);
        var calm = CapabilityStudy.process(values.clone(), SpecLimits.between(-6, 6), USUAL)
                .orThrow();
        values[100] = 8;
        var study = CapabilityStudy.process(values, SpecLimits.between(-6, 6), USUAL)
                .orThrow();
        assertEquals(Stability.Word.OUT_OF_CONTROL, study.stability().word());
        assertEquals(List.of(100), study.stability().strays());
        assertEquals(
                calm.ppk().orThrow().value(), study.ppk().orThrow().value(), 0.05, "the stray is not in the index");
        assertEquals(1, study.outside().counted().count(), "it is in the counted share");
        assertEquals(Optional.of(Reason.ASSUMPTION_FAILS), study.cpk().missingFor());
    }

    @Test
    void a_stray_among_skewed_values_is_found_in_their_logarithms() {
        var values = Arrays.stream(Simulated.normal(52, 200))
                .map(z -> Math.exp(0.5 * z))
                .toArray();
        values[40] = 60;
        var study =
                CapabilityStudy.process(values, SpecLimits.atMost(70), USUAL).orThrow();
        assertEquals(Shape.LOGNORMAL, study.shape());
        assertEquals(List.of(40), study.stability().strays());
    }

    /** The share counted needs no shape: 9 of 200 have the bounds of Clopper and Pearson. */
    @Test
    void a_share_is_counted_where_no_shape_fits() {
        var values = Simulated.normal(45, 200);
        for (int i = 0; i < values.length; i++) values[i] += i % 2 * 8;
        var outside = CapabilityStudy.process(values, SpecLimits.between(-1.5, 20), USUAL)
                .orThrow()
                .outside();
        long beyond = Arrays.stream(values).filter(x -> x < -1.5).count();
        assertTrue(beyond > 0);
        assertEquals(
                Proportion.of(beyond, 200, 0.95, Proportion.Method.CLOPPER_PEARSON)
                        .orThrow(),
                outside.counted());
        assertEquals(Optional.of(Reason.ASSUMPTION_FAILS), outside.foretold().missingFor());
    }

    @Test
    void values_that_stand_for_themselves_foretell_no_share() {
        var values = Simulated.normal(45, 3000);
        for (int i = 0; i < values.length; i++) values[i] += i % 2 * 8;
        var study = CapabilityStudy.process(values, SpecLimits.between(-10, 20), USUAL)
                .orThrow();
        assertEquals(Shape.EMPIRICAL, study.shape());
        assertTrue(study.ppk().found().isPresent());
        assertEquals(
                Optional.of(Reason.ASSUMPTION_FAILS), study.outside().foretold().missingFor());
        assertEquals(0, study.outside().counted().count());
    }

    /** Theory: bounds of a mean widen by sqrt((1 + r) / (1 - r)), 2.8 at r = 0.78; without it they hold far less often. */
    @Test
    void bounds_allow_for_neighbours_that_resemble_each_other() {
        int held = 0;
        int trials = 0;
        for (int run = 0; run < 300; run++) {
            var study = CapabilityStudy.process(alike(run), SpecLimits.atMost(3), USUAL)
                    .orThrow();
            if (study.shape() != Shape.NORMAL) continue;
            trials++;
            if (study.ppk().orThrow().bounds().contains(1)) held++;
        }
        assertTrue(trials > 100 && held >= 0.9 * trials, held + " of " + trials);
    }

    @Test
    void a_short_term_deviation_of_neighbours_alike_gives_no_index() {
        var study = CapabilityStudy.process(alike(1), SpecLimits.between(-3, 3), USUAL)
                .orThrow();
        assertEquals(0.78, study.neighbours().lagOne(), 0.12);
        assertEquals(Optional.of(Reason.ASSUMPTION_FAILS), study.cp().missingFor());
        assertTrue(study.cp().whyMissing().orElse("").startsWith("neighbours resemble each other"));
    }

    private static double[] alike(int run) {
        var x = Simulated.normal(310_000L + run, 300);
        for (int i = 1; i < x.length; i++) x[i] = 0.78 * x[i - 1] + Math.sqrt(1 - 0.78 * 0.78) * x[i];
        return x;
    }
}
