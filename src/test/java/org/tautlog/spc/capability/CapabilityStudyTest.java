package org.tautlog.spc.capability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

class CapabilityStudyTest {
    private static final CapabilityOptions USUAL = CapabilityOptions.withDefaults();
    private static final SpecLimits FOUR_SIGMA = SpecLimits.between(-4, 4);

    @Test
    void a_steady_normal_process_has_both_pairs_of_indices_and_a_good_word() {
        var study = CapabilityStudy.process(Simulated.normal(41, 300), FOUR_SIGMA, USUAL)
                .orThrow();
        assertEquals(Shape.NORMAL, study.shape());
        assertEquals(Stability.Word.IN_CONTROL, study.stability().word());
        for (var index : new CapabilityIndex[] {study.cp().orThrow(), study.pp().orThrow()})
            assertTrue(index.bounds().contains(4.0 / 3), index.toString());
        assertTrue(study.cpk().orThrow().value() <= study.cp().orThrow().value());
        assertEquals(0, study.outside().counted().count());
        assertTrue(study.outside().foretold().orThrow().bounds().contains(2 * 3.167e-5));
    }

    @Test
    void a_shift_in_the_middle_shows_as_a_bad_word_and_as_cp_above_pp() {
        var values = Simulated.normal(42, 200);
        for (int i = 100; i < 200; i++) values[i] += 3;
        var study = CapabilityStudy.process(values, SpecLimits.between(-5, 8), USUAL)
                .orThrow();
        assertEquals(Stability.Word.OUT_OF_CONTROL, study.stability().word());
        assertTrue(study.overallSd() > 1.4 * study.shortSigma());
    }

    @Test
    void skewed_values_are_judged_by_percentiles_and_say_so() {
        var values = Simulated.normal(43, 400);
        for (int i = 0; i < values.length; i++) values[i] = Math.exp(0.5 * values[i]);
        var spec = SpecLimits.atMost(Math.exp(0.5 * 4));
        var study = CapabilityStudy.process(values, spec, USUAL).orThrow();
        assertEquals(Shape.LOGNORMAL, study.shape());
        double truth = (Math.exp(2) - 1) / (Math.exp(0.5 * 2.99997699) - 1);
        assertTrue(study.ppk().orThrow().bounds().contains(truth), study.ppk() + " should hold " + truth);
        assertEquals(
                CapabilityIndex.Method.PERCENTILE_FITTED, study.ppk().orThrow().method());
        assertEquals(Optional.of(Reason.ASSUMPTION_FAILS), study.cpk().missingFor());
        assertEquals(Optional.of(Reason.NOT_ASKED), study.pp().missingFor());
        assertTrue(study.outside().foretold().orThrow().bounds().contains(3.167e-5));
    }

    @Test
    void values_of_no_known_form_are_judged_only_when_there_are_enough() {
        var few = twoHumps(200);
        var study =
                CapabilityStudy.process(few, SpecLimits.between(-10, 20), USUAL).orThrow();
        assertEquals(Optional.of(Reason.ASSUMPTION_FAILS), study.ppk().missingFor());
        var many = CapabilityStudy.process(twoHumps(3000), SpecLimits.between(-10, 20), USUAL)
                .orThrow();
        assertEquals(Shape.EMPIRICAL, many.shape());
        assertEquals(
                CapabilityIndex.Method.PERCENTILE_EMPIRICAL,
                many.ppk().orThrow().method());
    }

    @Test
    void a_machine_study_asks_for_thirty_values() {
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                CapabilityStudy.machine(Simulated.normal(44, 29), FOUR_SIGMA, USUAL)
                        .missingFor());
        var study = CapabilityStudy.machine(Simulated.normal(44, 50), FOUR_SIGMA, USUAL)
                .orThrow();
        assertTrue(study.cm().orThrow().bounds().contains(4.0 / 3));
        assertTrue(study.cmk().orThrow().value() <= study.cm().orThrow().value());
    }

    /** Theory: the bounds on the share beyond one limit are exact, from the noncentral t. */
    @Test
    void bounds_on_the_foretold_share_hold_the_truth_as_often_as_stated() {
        double truth = NormalDistribution.of(0, 1).survivalProbability(2);
        int trials = 600;
        int held = 0;
        for (int run = 0; run < trials; run++) {
            var sample = Simulated.normal(50_000L + run, 40);
            var all = CapabilityOptions.withDefaults();
            var options = new CapabilityOptions(0.90, 0, all.stabilityRules(), all.resamples(), all.seed());
            var outside = CapabilityStudy.machine(sample, SpecLimits.atMost(2), options)
                    .orThrow()
                    .outside()
                    .foretold()
                    .orThrow();
            if (outside.bounds().contains(truth)) held++;
        }
        Simulated.assertRate(0.90, held, trials, "bounds that hold the truth");
    }

    /** Theory: the test rejects 5 % of normal samples. */
    @Test
    void normal_samples_are_rejected_as_often_as_stated() {
        int trials = 3000;
        int rejected = 0;
        for (int run = 0; run < trials; run++)
            if (AndersonDarling.of(Simulated.normal(60_000L + run, 50))
                            .orThrow()
                            .pValue()
                    < 0.05) rejected++;
        Simulated.assertRate(0.05, rejected, trials, "normal samples rejected");
    }

    @Test
    void data_that_cannot_be_studied_get_a_reason() {
        assertEquals(
                Optional.of(Reason.EMPTY),
                CapabilityStudy.process(new double[0], FOUR_SIGMA, USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                CapabilityStudy.process(new double[] {1, 2}, FOUR_SIGMA, USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                CapabilityStudy.process(new double[] {1, 1, 1, 1, 1, 1}, FOUR_SIGMA, USUAL)
                        .missingFor());
        var few = CapabilityStudy.process(new double[] {1, 2, 1.5, 1.2, 1.7}, FOUR_SIGMA, USUAL)
                .orThrow();
        assertEquals(Stability.Word.NOT_SHOWN, few.stability().word());
        assertEquals(Optional.of(Reason.TOO_FEW), few.normality().missingFor());
    }

    private static double[] twoHumps(int n) {
        var values = Simulated.normal(45, n);
        for (int i = 0; i < n; i++) values[i] += i % 2 * 8;
        return values;
    }
}
