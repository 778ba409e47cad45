package org.tautlog.spc.capability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.spc.Simulated;

/** How often the word on control is wrong of calm series, and how often it sees a level that moved. */
class LevelInControlTest {
    private static final int TRIALS = 500;
    private static final CapabilityOptions FEW_RESAMPLES =
            new CapabilityOptions(0.95, 0.05, CapabilityOptions.withDefaults().stabilityRules(), 50, 1);

    /** Theory: chart and level call at most 1 calm series in 100 each; a first-order series of 0.4 has its r estimated. */
    @ParameterizedTest(name = "r = {0}, n = {1}")
    @CsvSource({"0,50", "0,200", "0.4,200"})
    void calm_series_are_called_out_of_control_no_oftener_than_stated(double r, int n) {
        int out = out(r, n, 0);
        assertTrue(out <= BinomialDistribution.of(TRIALS, 0.02).inverseCumulativeProbability(0.999), out + " calm");
    }

    /** A step of one standard deviation half-way through 200 single values: limits of single values see 1 in 28. */
    @Test
    void a_step_of_one_deviation_is_seen_in_single_values() {
        assertTrue(out(0, 200, 1) >= 0.99 * TRIALS);
        assertTrue(out(0.4, 200, 1) >= 0.8 * TRIALS);
    }

    @Test
    void a_step_of_one_deviation_is_seen_in_subgroups_of_five() {
        int out = 0;
        for (int run = 0; run < TRIALS; run++) {
            var x = series(run, 0, 200, 1);
            var groups = new double[40][];
            for (int g = 0; g < 40; g++) groups[g] = Arrays.copyOfRange(x, 5 * g, 5 * g + 5);
            if (word(CapabilityStudy.process(groups, SpecLimits.between(-40, 40), FEW_RESAMPLES)
                    .orThrow())) out++;
        }
        assertTrue(out >= 0.88 * TRIALS, out + " of " + TRIALS);
    }

    @Test
    void the_word_names_where_the_level_moved() {
        var x = series(1, 0, 200, 3);
        var word = CapabilityStudy.process(x, SpecLimits.between(-40, 40), FEW_RESAMPLES)
                .orThrow()
                .stability();
        assertEquals(100, word.movedAt(), 3);
        assertTrue(word.said().contains("the level moved at value "), word.said());
        assertNull(CapabilityStudy.process(series(1, 0, 200, 0), SpecLimits.between(-40, 40), FEW_RESAMPLES)
                .orThrow()
                .stability()
                .movedAt());
    }

    private static int out(double r, int n, double step) {
        int out = 0;
        for (int run = 0; run < TRIALS; run++)
            if (word(CapabilityStudy.process(series(run, r, n, step), SpecLimits.between(-40, 40), FEW_RESAMPLES)
                    .orThrow())) out++;
        return out;
    }

    private static boolean word(Capability study) {
        return study.stability().word() == Stability.Word.OUT_OF_CONTROL;
    }

    private static double[] series(int run, double r, int n, double step) {
        var x = Simulated.normal(210_000L + run, n);
        for (int i = 1; i < n; i++) x[i] = r * x[i - 1] + Math.sqrt(1 - r * r) * x[i];
        for (int i = n / 2; i < n; i++) x[i] += step;
        return x;
    }
}
