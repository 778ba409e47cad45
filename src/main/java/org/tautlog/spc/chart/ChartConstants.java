package org.tautlog.spc.chart;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.special.Gamma;
import org.tautlog.spc.Quadrature;

/**
 * Factors that turn the range or standard deviation of a normal subgroup into the process's standard deviation.
 *
 * <pre>{@code
 * d2 = E(W) = integral of 1 - (1 - F(x))^n - F(x)^n dx            W range of n standard normal values
 * d3 = sqrt(E(W^2) - d2^2),  E(W^2) = integral over w > 0 of 2 w (1 - P(W <= w)) dw
 *      P(W <= w) = n integral of f(x) (F(x + w) - F(x))^(n - 1) dx
 * c4 = sqrt(2 / (n - 1)) Gamma(n / 2) / Gamma((n - 1) / 2)
 * n = 2: W = sqrt(2) |N|, so d2 = 2 / sqrt(pi), E(W^2) = 2
 * }</pre>
 *
 * f, F: density and distribution of the standard normal. Each is computed, none typed in.
 *
 * <p>Source: Tippett, Biometrika 17 (1925); ISO 7870-2 prints the values.
 *
 * @param n subgroup size, 2 to 1000
 * @param d2 mean of the relative range
 * @param d3 standard deviation of the relative range
 * @param c4 mean of the relative standard deviation
 */
public record ChartConstants(int n, double d2, double d3, double c4) {
    private static final int LARGEST = 1000;
    /** Beyond this many standard deviations the normal density adds less than 1e-17. */
    private static final double REACH = 9;

    private static final double STEP = 1.0 / 8;
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    /** Every chart of single values asks for these, so they must cost nothing. */
    private static final ChartConstants PAIR =
            new ChartConstants(2, 2 / Math.sqrt(Math.PI), Math.sqrt(2 - 4 / Math.PI), c4(2));

    /**
     * Computes the factors of one subgroup size.
     *
     * @param n subgroup size, 2 to 1000
     * @return its factors
     */
    public static ChartConstants of(int n) {
        if (n < 2 || n > LARGEST)
            throw new IllegalArgumentException("n is " + n + "; a subgroup holds from 2 to " + LARGEST + " values");
        if (n == 2) return PAIR;
        double d2 = meanRange(n);
        double square = Quadrature.integrate(w -> 2 * w * (1 - rangeDistribution(n, w)), 0, 2 * REACH, 5);
        return new ChartConstants(n, d2, Math.sqrt(square - d2 * d2), c4(n));
    }

    /**
     * Computes c4 alone, which has a closed form.
     *
     * @param n sample size, at least 2
     * @return mean of the standard deviation of n standard normal values
     */
    public static double c4(int n) {
        if (n < 2) throw new IllegalArgumentException("n is " + n + "; a standard deviation needs 2 values");
        return Math.sqrt(2.0 / (n - 1)) * Math.exp(Gamma.logGamma(n / 2.0) - Gamma.logGamma((n - 1) / 2.0));
    }

    /** {@return the standard deviation of the relative standard deviation, sqrt(1 - c4^2)} */
    public double c5() {
        return Math.sqrt(1 - c4 * c4);
    }

    /** The trapezoid rule converges faster than any power of the step for such bell-shaped integrands. */
    private static double meanRange(int n) {
        double sum = 0;
        for (double x = -REACH; x <= REACH; x += STEP) {
            double below = NORMAL.cumulativeProbability(x);
            double above = NORMAL.survivalProbability(x);
            sum += 1 - Math.pow(above, n) - Math.pow(below, n);
        }
        return sum * STEP;
    }

    private static double rangeDistribution(int n, double w) {
        double sum = 0;
        for (double x = -REACH; x <= REACH; x += STEP)
            sum += NORMAL.density(x) * Math.pow(NORMAL.probability(x, x + w), n - 1);
        return Math.min(1, n * sum * STEP);
    }
}
