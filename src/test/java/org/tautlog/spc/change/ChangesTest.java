package org.tautlog.spc.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

class ChangesTest {
    private static final ChangeOptions USUAL = ChangeOptions.withDefaults();
    private static final ChangeOptions AT_5_PERCENT = new ChangeOptions(5, 0.95, 0.05);

    @ParameterizedTest(name = "n = {0}")
    @ValueSource(ints = {30, 100, 400})
    void a_steady_series_is_called_changed_no_oftener_than_stated(int n) {
        int trials = 1000;
        int mean = called(trials, run -> Changes.ofMean(Simulated.normal(1000L + run, n), AT_5_PERCENT));
        int spread = called(trials, run -> Changes.ofSpread(Simulated.normal(9000L + run, n), AT_5_PERCENT));
        assertTrue(mean <= 0.065 * trials && mean >= 0.02 * trials, mean + " of " + trials + " changes of mean");
        assertTrue(
                spread <= 0.065 * trials && spread >= 0.02 * trials, spread + " of " + trials + " changes of spread");
    }

    @Test
    void the_stated_times_hold_the_true_one_as_often_as_stated() {
        int trials = 1000;
        int held = 0;
        int sizeHeld = 0;
        for (int run = 0; run < trials; run++) {
            var values = Simulated.normal(20_000L + run, 80);
            for (int i = 50; i < 80; i++) values[i] += 1.5;
            var change = Changes.ofMean(values, USUAL).orThrow();
            if (change.earliest() <= 50 && 50 <= change.latest()) held++;
            if (change.size().bounds().contains(1.5)) sizeHeld++;
        }
        assertTrue(held >= 0.93 * trials, held + " of " + trials + " times");
        assertTrue(sizeHeld >= 0.92 * trials, sizeHeld + " of " + trials + " sizes");
    }

    @Test
    void a_doubled_spread_is_found_with_its_time_and_ratio() {
        var values = Simulated.normal(31, 200);
        for (int i = 120; i < 200; i++) values[i] *= 2;
        var change = Changes.ofSpread(values, USUAL).orThrow();
        assertTrue(change.significant());
        assertTrue(change.earliest() <= 120 && 120 <= change.latest(), change.toString());
        assertTrue(change.size().bounds().contains(2), change.toString());
        assertTrue(!Changes.ofMean(values, USUAL).orThrow().significant());
    }

    @Test
    void a_shifted_mean_is_not_taken_for_a_changed_spread() {
        var values = Simulated.normal(32, 200);
        for (int i = 120; i < 200; i++) values[i] += 3;
        assertTrue(Changes.ofMean(values, USUAL).orThrow().significant());
        assertTrue(!Changes.ofSpread(values, USUAL).orThrow().significant());
    }

    @Test
    void two_changes_are_found_in_time_order() {
        var values = Simulated.normal(33, 150);
        for (int i = 50; i < 100; i++) values[i] += 3;
        var changes = Changes.allOfMean(values, USUAL).orThrow();
        assertEquals(2, changes.size());
        assertEquals(50, changes.get(0).index(), 2);
        assertEquals(100, changes.get(1).index(), 2);
    }

    @Test
    void a_large_jump_is_not_taken_for_resemblance_of_neighbours() {
        for (int run = 0; run < 50; run++) {
            var values = Simulated.normal(34_000L + run, 40);
            for (int i = 22; i < 40; i++) values[i] += 10;
            var change = Changes.ofMean(values, USUAL).orThrow();
            assertEquals(22, change.index());
            assertTrue(change.pValue() < 1e-4, change.toString());
        }
    }

    @Test
    void a_step_without_noise_has_an_exact_time() {
        var change = Changes.ofMean(new double[] {1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2}, USUAL)
                .orThrow();
        assertEquals(6, change.index());
        assertEquals(6, change.earliest());
        assertEquals(6, change.latest());
        assertEquals(1, change.size().value());
        assertTrue(change.significant());
    }

    @Test
    void a_slow_wander_is_not_called_a_step_as_often_as_independent_theory_would() {
        int trials = 500;
        int called = called(trials, run -> {
            var values = Simulated.normal(40_000L + run, 200);
            for (int i = 1; i < values.length; i++) values[i] += 0.5 * values[i - 1];
            return Changes.ofMean(values, AT_5_PERCENT);
        });
        assertTrue(called <= 0.15 * trials, called + " of " + trials);
    }

    @Test
    void data_that_cannot_be_searched_get_a_reason() {
        assertEquals(
                Optional.of(Reason.EMPTY), Changes.ofMean(new double[0], USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                Changes.ofMean(new double[] {1, 2}, USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                Changes.ofMean(new double[20], USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                Changes.ofSpread(new double[] {1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2}, USUAL)
                        .missingFor());
    }

    private static int called(int trials, IntFunction<Answer<ChangePoint>> series) {
        int called = 0;
        for (int run = 0; run < trials; run++) if (series.apply(run).orThrow().significant()) called++;
        return called;
    }
}
