package org.tautlog.spc.timeweighted;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;

/**
 * How many points a chart with known limits runs on average until it signals, for normal independent values whose mean lies
 * {@code shift} standard deviations off.
 *
 * <pre>{@code
 * limits:  1 / (1 - P(-width < Z + shift < width))
 * EWMA:    L(u) = 1 + integral over |z| < H of L(z) f((z - (1 - lambda) u) / lambda - shift) / lambda dz,  H = width sqrt(lambda / (2 - lambda))
 * CUSUM:   L(u) = 1 + L(0) F(k - u - shift) + integral over 0 < z < h of L(z) f(z + k - u - shift) dz;  1 / L = 1 / L+ + 1 / L-
 * }</pre>
 *
 * <p>The integral equations are solved by Gauss-Legendre quadrature. The sum of two one-sided rates holds for both sums
 * starting at 0, and nearly so with a head start.
 *
 * <p>Source: Crowder, Technometrics 29 (1987); Page, Biometrika 41 (1954); Montgomery 9 prints tables.
 */
public final class RunLength {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int NODES = 60;
    private static final double SMALLEST_PIVOT = 1e-300;
    /** Longer runs drown in the rounding of the equations; for every purpose here they never end. */
    private static final double LONGEST = 1e12;

    private RunLength() {}

    /**
     * {@return the average run length of a chart of single values or means with its limits only}
     *
     * @param width limits' distance in standard deviations of what is plotted
     * @param shift shift of the mean in the same
     */
    public static double ofLimits(double width, double shift) {
        return 1 / (NORMAL.survivalProbability(width - shift) + NORMAL.cumulativeProbability(-width - shift));
    }

    /**
     * {@return the average run length of a two-sided EWMA with steady limits, started at the centre}
     *
     * @param lambda weight of the newest value, above 0 up to 1
     * @param width limits' distance in standard deviations of the average
     * @param shift shift of the mean in standard deviations of single values
     */
    public static double ofEwma(double lambda, double width, double shift) {
        double h = width * Math.sqrt(lambda / (2 - lambda));
        var equation =
                new Equation(-h, h, (u, z) -> NORMAL.density((z - (1 - lambda) * u) / lambda - shift) / lambda, u -> 0);
        return equation.at(0);
    }

    /**
     * {@return the average run length of a two-sided CUSUM}
     *
     * @param reference k in standard deviations
     * @param decision h in standard deviations
     * @param shift shift of the mean in standard deviations
     * @param headStart where the sums start, in standard deviations, from 0 to below h
     */
    public static double ofCusum(double reference, double decision, double shift, double headStart) {
        if (headStart == 0)
            return 1 / (1 / oneSided(reference, decision, shift, 0) + 1 / oneSided(reference, decision, -shift, 0));
        double up = oneSided(reference, decision, shift, headStart);
        double upPlain = oneSided(reference, decision, shift, 0);
        double down = oneSided(reference, decision, -shift, headStart);
        double downPlain = oneSided(reference, decision, -shift, 0);
        return (up * downPlain + upPlain * down - upPlain * downPlain) / (upPlain + downPlain);
    }

    private static double oneSided(double k, double h, double shift, double start) {
        return new Equation(
                        0,
                        h,
                        (u, z) -> NORMAL.density(z + k - u - shift),
                        u -> NORMAL.cumulativeProbability(k - u - shift))
                .at(start);
    }

    private interface Kernel {
        double at(double from, double to);
    }

    /** L(u) = 1 + atom(u) L(0) + integral of kernel(u, z) L(z) dz, solved at the nodes and read anywhere. */
    private static final class Equation {
        private final double[] nodes = new double[NODES];
        private final double[] weights = new double[NODES];
        private final double[] solved;
        private final Kernel kernel;
        private final DoubleUnaryOperator atom;

        Equation(double from, double to, Kernel kernel, DoubleUnaryOperator atom) {
            this.kernel = kernel;
            this.atom = atom;
            var rule = new GaussIntegratorFactory().legendre(NODES, from, to);
            var matrix = new Array2DRowRealMatrix(NODES + 1, NODES + 1);
            for (int i = 0; i < NODES; i++) {
                nodes[i] = rule.getPoint(i);
                weights[i] = rule.getWeight(i);
            }
            for (int i = 0; i <= NODES; i++) {
                double u = i < NODES ? nodes[i] : 0;
                for (int j = 0; j < NODES; j++) matrix.setEntry(i, j, -weights[j] * kernel.at(u, nodes[j]));
                matrix.setEntry(i, NODES, -atom.applyAsDouble(u));
                matrix.addToEntry(i, i, 1);
            }
            var ones = new ArrayRealVector(NODES + 1, 1.0);
            solved = new LUDecomposition(matrix, SMALLEST_PIVOT)
                    .getSolver()
                    .solve(ones)
                    .toArray();
        }

        double at(double u) {
            double sum = 1 + atom.applyAsDouble(u) * solved[NODES];
            for (int j = 0; j < NODES; j++) sum += weights[j] * kernel.at(u, nodes[j]) * solved[j];
            return sum > 0 && sum < LONGEST ? sum : LONGEST;
        }
    }
}
