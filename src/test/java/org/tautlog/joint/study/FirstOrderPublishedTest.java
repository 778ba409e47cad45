package org.tautlog.joint.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.ToDoubleFunction;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sensitivity indices against functions whose indices are known. */
class FirstOrderPublishedTest {
    private static final int DRAWS = 100_000;
    private static final double THREE_STANDARD_ERRORS = 0.006;

    /** Source: Ishigami and Homma (1990) with a = 7, b = 0.1; indices as printed by Saltelli et al. (2008): 0.3139, 0.4424, 0. */
    @ParameterizedTest(name = "factor {0}: {1}")
    @CsvSource({"0,0.3139", "1,0.4424", "2,0"})
    @DisplayName("Ishigami's function: straight, curved and interacting factors")
    void ishigami(int factor, double index) {
        assertEquals(
                index,
                index(factor, u -> {
                    double first = angle(u[0]), second = angle(u[1]), third = angle(u[2]);
                    return Math.sin(first)
                            + 7 * Math.pow(Math.sin(second), 2)
                            + 0.1 * Math.pow(third, 4) * Math.sin(first);
                }),
                THREE_STANDARD_ERRORS);
    }

    /** By hand: the variances of 3, 2 and 1 times an even variable are as 9 to 4 to 1. */
    @ParameterizedTest(name = "factor {0}: {1} of 14")
    @CsvSource({"0,9", "1,4", "2,1"})
    void a_sum_shares_its_variance_out(int factor, double parts) {
        assertEquals(parts / 14, index(factor, u -> 3 * u[0] + 2 * u[1] + u[2]), THREE_STANDARD_ERRORS);
    }

    private static double angle(double probability) {
        return Math.PI * (2 * probability - 1);
    }

    private static double index(int factor, ToDoubleFunction<double[]> model) {
        var random = RandomSource.XO_SHI_RO_256_PP.create(20_260_101L);
        var probability = new double[DRAWS];
        var y = new double[DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] u = {random.nextDouble(), random.nextDouble(), random.nextDouble()};
            probability[draw] = u[factor];
            y[draw] = model.applyAsDouble(u);
        }
        return FirstOrder.index(probability, y);
    }
}
