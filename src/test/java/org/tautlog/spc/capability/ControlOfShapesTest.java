package org.tautlog.spc.capability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntFunction;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ExponentialDistribution;
import org.apache.commons.statistics.distribution.GumbelDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.spc.Simulated;

/** The word on control where values are not normal. */
class ControlOfShapesTest {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final CapabilityOptions FEW_RESAMPLES =
            new CapabilityOptions(0.95, 0.05, CapabilityOptions.withDefaults().stabilityRules(), 50, 1);
    private static final int TRIALS = 500;

    /** Theory: out of control is said of at most 1 calm group in 100; by limits for normal values it was said of half. */
    @ParameterizedTest(name = "{0}, n = {1}")
    @CsvSource({"LOGNORMAL,50", "LOGNORMAL,100", "EXPONENTIAL,100", "GUMBEL,100", "NORMAL,100"})
    void calm_groups_are_called_out_of_control_no_oftener_than_stated(String shape, int n) {
        var words = words(run -> shaped(shape, Simulated.normal(7000L + 13L * run + n, n)));
        assertTrue(words.get(Stability.Word.OUT_OF_CONTROL) <= atMost(0.01), words.toString());
        assertTrue(words.get(Stability.Word.IN_CONTROL) >= 0.93 * TRIALS, words.toString());
    }

    @Test
    void calm_subgroups_of_a_skewed_shape_are_called_out_of_control_no_oftener_than_stated() {
        int out = 0;
        for (int run = 0; run < TRIALS; run++) {
            var study = CapabilityStudy.process(
                            groups(shaped("EXPONENTIAL", Simulated.normal(90_000L + run, 120)), 3),
                            SpecLimits.atMost(100),
                            FEW_RESAMPLES)
                    .orThrow();
            if (study.stability().word() == Stability.Word.OUT_OF_CONTROL) out++;
        }
        assertTrue(out <= atMost(0.01), out + " of " + TRIALS);
    }

    /** A step of three standard deviations of the logarithms, half-way through 100 values. */
    @Test
    void a_step_is_found_in_skewed_values_as_often_as_in_normal_ones() {
        IntFunction<double[]> stepped = run -> {
            var z = Simulated.normal(17_000L + run, 100);
            for (int i = 50; i < 100; i++) z[i] += 3;
            return z;
        };
        int normal = words(stepped).get(Stability.Word.OUT_OF_CONTROL);
        int lognormal = words(run -> shaped("LOGNORMAL", stepped.apply(run))).get(Stability.Word.OUT_OF_CONTROL);
        assertTrue(normal >= 0.85 * TRIALS, normal + " of " + TRIALS + " normal");
        assertEquals(normal, lognormal, 0.05 * TRIALS);
    }

    @Test
    void where_no_shape_fits_control_is_not_shown() {
        var humps = Simulated.normal(45, 200);
        for (int i = 0; i < humps.length; i++) humps[i] += i % 2 * 8;
        var word = CapabilityStudy.process(humps, SpecLimits.between(-10, 20), FEW_RESAMPLES)
                .orThrow()
                .stability();
        assertEquals(Stability.Word.NOT_SHOWN, word.word());
        assertTrue(word.said().startsWith("no shape fits"), word.said());
    }

    @Test
    void the_word_says_which_shape_was_charted() {
        var word = CapabilityStudy.process(
                        shaped("LOGNORMAL", Simulated.normal(43, 400)), SpecLimits.atMost(100), FEW_RESAMPLES)
                .orThrow()
                .stability();
        assertTrue(word.said().contains("charted as normal scores of the fitted lognormal"), word.said());
    }

    private static Map<Stability.Word, Integer> words(IntFunction<double[]> series) {
        var words = new EnumMap<Stability.Word, Integer>(Stability.Word.class);
        Arrays.stream(Stability.Word.values()).forEach(word -> words.put(word, 0));
        for (int run = 0; run < TRIALS; run++) {
            var study = CapabilityStudy.process(series.apply(run), SpecLimits.atMost(100), FEW_RESAMPLES)
                    .orThrow();
            words.merge(study.stability().word(), 1, Integer::sum);
        }
        return words;
    }

    /** The most of so many trials that a rate gives in 999 of 1000. */
    private static int atMost(double rate) {
        return BinomialDistribution.of(TRIALS, rate).inverseCumulativeProbability(0.999);
    }

    private static double[] shaped(String shape, double[] z) {
        return Arrays.stream(z)
                .map(x -> switch (shape) {
                    case "LOGNORMAL" -> Math.exp(0.5 * x);
                    case "EXPONENTIAL" ->
                        ExponentialDistribution.of(1).inverseSurvivalProbability(STANDARD.survivalProbability(x));
                    case "GUMBEL" ->
                        GumbelDistribution.of(5, 1).inverseSurvivalProbability(STANDARD.survivalProbability(x));
                    default -> x;
                })
                .toArray();
    }

    private static double[][] groups(double[] values, int size) {
        var groups = new double[values.length / size][];
        for (int g = 0; g < groups.length; g++) groups[g] = Arrays.copyOfRange(values, g * size, (g + 1) * size);
        return groups;
    }
}
