package org.tautlog.signature;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The room's own quick fits against a general-purpose library: Hipparchus. */
class FitsAgainstLibraryTest {
    private static double[] angles(int n, double start, SplittableRandom random) {
        var x = new double[n];
        double at = start;
        for (int i = 0; i < n; i++) {
            at += 0.05 + random.nextDouble();
            x[i] = at;
        }
        return x;
    }

    private static double[] torques(double[] x, SplittableRandom random) {
        return Arrays.stream(x)
                .map(deg -> 5 + 0.14 * (deg - x[0]) + 0.3 * random.nextGaussian())
                .toArray();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-5261, 0, 20_000})
    void the_moving_line_is_the_least_squares_line_of_each_window(double start) {
        var random = new SplittableRandom(7);
        var x = angles(1500, start, random);
        var y = torques(x, random);
        double span = 15;
        var moving = MovingLine.through(x, y, x.length, span);
        for (int i = 0; i < x.length; i += 13) {
            double middle = Math.max(x[0] + span / 2, Math.min(x[i], x[x.length - 1] - span / 2));
            var regression = new SimpleRegression();
            for (int j = 0; j < x.length; j++) {
                if (Math.abs(x[j] - middle) <= span / 2) {
                    regression.addData(x[j] - x[i], y[j]);
                }
            }
            assertEquals(regression.getSlope(), moving.slope(i), 1e-7, "slope at " + i);
            assertEquals(regression.getIntercept(), moving.value(i), 1e-6, "value at " + i);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.025, 0.05, 0.5, 0.95, 0.975})
    void percentiles_are_those_of_linear_interpolation(double share) {
        var random = new SplittableRandom(11);
        for (int n = 1; n <= 200; n++) {
            var values = random.doubles(n, -5, 5).map(Math::rint).toArray();
            var library = new Percentile(100 * share).withEstimationType(Percentile.EstimationType.R_7);
            assertEquals(library.evaluate(values), Robust.percentile(values.clone(), share), 1e-12, "of " + n);
        }
    }

    @Test
    void the_robust_line_is_near_least_squares_on_quiet_points_and_keeps_it_where_some_are_wild() {
        var random = new SplittableRandom(3);
        var x = angles(300, 100, random);
        var y = torques(x, random);
        var regression = new SimpleRegression();
        for (int i = 0; i < x.length; i++) {
            regression.addData(x[i], y[i]);
        }
        var quiet = RobustLine.through(x, y, 0, x.length);
        assertEquals(regression.getSlope(), quiet.slope(), 2 * regression.getSlopeStdErr());
        assertEquals(regression.getSlopeStdErr(), quiet.slopeUncertainty(), 0.35 * regression.getSlopeStdErr());
        for (int i = 0; i < x.length; i += 12) {
            y[i] -= 15;
        }
        var wild = RobustLine.through(x, y, 0, x.length);
        assertEquals(regression.getSlope(), wild.slope(), 4 * regression.getSlopeStdErr());
        assertEquals(quiet.torqueAt(x[150]), wild.torqueAt(x[150]), 0.1);
    }

    @Test
    void the_noise_is_that_of_the_samples_whatever_the_slope() {
        var random = new SplittableRandom(5);
        var x = angles(2000, 0, random);
        assertEquals(0.3, Cells.noiseNm(x, torques(x, random), 0, x.length), 0.05);
    }
}
