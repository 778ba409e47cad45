package org.tautlog.spc.capability;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Gamma;
import org.tautlog.spc.Quadrature;

/**
 * One-sided tolerance factors of the normal distribution, and the exact bounds on a fraction beyond one limit that follow
 * from the same noncentral t.
 *
 * <pre>{@code
 * P(T <= t; nu, delta) = integral over s > 0 of F(t s - delta) g(s) ds
 * factor k:  P(T <= k sqrt(n); n - 1, z(coverage) sqrt(n)) = confidence
 * bound on the fraction beyond a limit k standard deviations away: F(-delta / sqrt(n)) with P(T <= k sqrt(n); delta) = tail
 * }</pre>
 *
 * F: standard normal distribution; g: density of chi(nu) / sqrt(nu).
 *
 * <p>Source: NIST/SEMATECH e-Handbook 7.2.6.3; ISO 16269-6.
 */
public final class ToleranceFactor {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int PANELS = 16;
    private static final double REACH = 9;

    private ToleranceFactor() {}

    /**
     * {@return the factor k by which mean + k s lies above the stated share of a normal population}
     *
     * @param n sample size, at least 2
     * @param coverage share of the population, above 0 and below 1
     * @param confidence how often the bound covers it, above 0 and below 1
     */
    public static double oneSided(int n, double coverage, double confidence) {
        if (n < 2) throw new IllegalArgumentException("n is " + n + "; it must be at least 2");
        double root = Math.sqrt(n);
        double delta = NORMAL.inverseCumulativeProbability(coverage) * root;
        return solve(t -> distribution(t, n - 1, delta) - confidence, delta) / root;
    }

    /** Bound on the share beyond a limit k standard deviations from the mean; a small tail gives the lower bound. */
    static double fractionBeyond(double k, int n, double tail) {
        double root = Math.sqrt(n);
        double delta = solve(d -> tail - distribution(k * root, n - 1, d), k * root);
        return NORMAL.cumulativeProbability(-delta / root);
    }

    static double distribution(double t, int nu, double delta) {
        double from = Math.max(0, 1 - REACH / Math.sqrt(2.0 * nu));
        double to = 1 + REACH / Math.sqrt(nu);
        double logScale = Math.log(2) + nu / 2.0 * Math.log(nu / 2.0) - Gamma.logGamma(nu / 2.0);
        double integral = Quadrature.integrate(
                s -> NORMAL.cumulativeProbability(t * s - delta)
                        * Math.exp(logScale + (nu - 1) * Math.log(s) - nu * s * s / 2),
                from,
                to,
                PANELS);
        return Math.min(1, integral);
    }

    private static double solve(DoubleUnaryOperator rising, double near) {
        double step = 1 + Math.abs(near) / 4;
        double low = near - step;
        double high = near + step;
        while (rising.applyAsDouble(low) > 0) low -= step *= 2;
        while (rising.applyAsDouble(high) < 0) high += step *= 2;
        return new BrentSolver(1e-10).solve(500, rising::applyAsDouble, low, high);
    }
}
