package org.tautlog.spc;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Centre and covariance of several features, and distances from the centre measured by it.
 *
 * <pre>
 * D2(x) = (x - m)' S^-1 (x - m)
 * part of feature j in it: D2 less its value without feature j = (Q z)[j]^2 / Q[j][j],  Q = R^-1, z = (x - m) / s
 * </pre>
 *
 * m: means, S: covariance, s: standard deviations, R: correlations. Work is done on correlations, so units do not matter.
 *
 * <p>Source: Mahalanobis (1936); parts: Mason, Tracy, Young, Journal of Quality Technology 27 (1995), from memory.
 */
public final class Covariance {
    /** Below this pivot a feature is, to rounding, a linear combination of the others. */
    private static final double LEAST_PIVOT = 1e-10;

    private final double[] mean;
    private final double[][] covariance;
    private final double[] sd;
    private final double[][] inverseCorrelation;
    private final double logDeterminant;

    private Covariance(double[] mean, double[][] covariance, double[] sd, RealMatrix inverse, double logDeterminant) {
        this.mean = mean;
        this.covariance = covariance;
        this.sd = sd;
        this.inverseCorrelation = inverse.getData();
        this.logDeterminant = logDeterminant;
    }

    /**
     * Estimates centre and covariance, with n - 1.
     *
     * @param rows one row an item, one column a feature; more rows than features
     * @return the estimate, or why there is none
     */
    public static Answer<Covariance> of(double[][] rows) {
        return check(rows).orElseGet(() -> {
            int p = rows[0].length;
            if (rows.length <= p)
                return Answer.missing(
                        Reason.TOO_FEW, rows.length + " rows; a covariance of " + p + " features needs more than " + p);
            var mean = new double[p];
            for (var row : rows) for (int j = 0; j < p; j++) mean[j] += row[j] / rows.length;
            var rest = new double[p];
            for (var row : rows) for (int j = 0; j < p; j++) rest[j] += (row[j] - mean[j]) / rows.length;
            for (int j = 0; j < p; j++) mean[j] += rest[j];
            var s = new double[p][p];
            for (var row : rows)
                for (int j = 0; j < p; j++)
                    for (int k = 0; k < p; k++) s[j][k] += (row[j] - mean[j]) * (row[k] - mean[k]) / (rows.length - 1);
            return of(mean, s);
        });
    }

    /**
     * Takes a centre and a covariance as given.
     *
     * @param mean the centre, one value a feature
     * @param covariance symmetric and positive definite
     * @return it, or why it cannot be used
     */
    public static Answer<Covariance> of(double[] mean, double[][] covariance) {
        int p = mean.length;
        var sd = new double[p];
        for (int j = 0; j < p; j++) {
            sd[j] = Math.sqrt(covariance[j][j]);
            if (!(sd[j] > Math.max(Sample.LEAST_SPREAD, Math.abs(mean[j]) * 1e-14) && Double.isFinite(sd[j])))
                return Answer.missing(Reason.NO_SPREAD, "feature " + (j + 1) + " does not vary");
        }
        var r = new Array2DRowRealMatrix(p, p);
        for (int j = 0; j < p; j++)
            for (int k = 0; k < p; k++)
                r.setEntry(j, k, j == k ? 1 : (covariance[j][k] + covariance[k][j]) / 2 / sd[j] / sd[k]);
        if (!positive(r))
            return Answer.missing(
                    Reason.NO_SPREAD, "one of the " + p + " features is a linear combination of the others");
        var root = new CholeskyDecomposition(r, 1e-12, LEAST_PIVOT);
        double log = Math.log(root.getDeterminant());
        for (double s : sd) log += 2 * Math.log(s);
        return Answer.of(new Covariance(
                mean.clone(),
                Arrays.stream(covariance).map(double[]::clone).toArray(double[][]::new),
                sd,
                root.getSolver().getInverse(),
                log));
    }

    /** Pivots of the root, tried by hand: the library throws where a reason is wanted. */
    private static boolean positive(RealMatrix r) {
        int p = r.getRowDimension();
        var root = new double[p][p];
        for (int j = 0; j < p; j++) {
            for (int k = 0; k <= j; k++) {
                double sum = r.getEntry(j, k);
                for (int i = 0; i < k; i++) sum -= root[j][i] * root[k][i];
                if (j == k && !(sum > LEAST_PIVOT)) return false;
                root[j][k] = j == k ? Math.sqrt(sum) : sum / root[k][k];
            }
        }
        return true;
    }

    /** The reason why rows cannot be used, if any: none, ragged, not finite. */
    static Optional<Answer<Covariance>> check(double[][] rows) {
        if (rows.length == 0 || rows[0].length == 0)
            return Optional.of(Answer.missing(Reason.EMPTY, "no rows of features"));
        for (int i = 0; i < rows.length; i++) {
            if (rows[i].length != rows[0].length)
                return Optional.of(Answer.missing(
                        Reason.UNEQUAL,
                        String.format(
                                Locale.ROOT,
                                "row %d holds %d features, row 1 holds %d",
                                i + 1,
                                rows[i].length,
                                rows[0].length)));
            var row = Sample.of(rows[i], 1, "row " + (i + 1));
            if (row.found().isEmpty()) return Optional.of(row.flatMap(never -> Answer.missing(Reason.EMPTY, "")));
        }
        return Optional.empty();
    }

    /** {@return how many features} */
    public int features() {
        return mean.length;
    }

    /**
     * {@return the mean of a feature}
     *
     * @param feature which one, from 0
     */
    public double mean(int feature) {
        return mean[feature];
    }

    /**
     * {@return a covariance}
     *
     * @param one a feature, from 0
     * @param other a feature, from 0
     */
    public double at(int one, int other) {
        return covariance[one][other];
    }

    /** {@return the natural logarithm of the determinant} */
    public double logDeterminant() {
        return logDeterminant;
    }

    /**
     * {@return the same centre with every covariance multiplied}
     *
     * @param factor the factor, above 0
     */
    public Covariance scaled(double factor) {
        var scaled = Arrays.stream(covariance)
                .map(row -> Arrays.stream(row).map(c -> c * factor).toArray())
                .toArray(double[][]::new);
        return of(mean, scaled).orThrow();
    }

    /**
     * {@return the squared distance of an item from the centre}
     *
     * @param row its features, as many as here, all finite
     */
    public double distanceSquared(double[] row) {
        var z = standardised(row);
        double sum = 0;
        for (int j = 0; j < z.length; j++) sum += z[j] * dot(inverseCorrelation[j], z);
        return Math.max(0, sum);
    }

    /**
     * {@return each feature's part in the squared distance of an item}
     *
     * @param row its features
     */
    public double[] parts(double[] row) {
        var z = standardised(row);
        var parts = new double[z.length];
        for (int j = 0; j < z.length; j++) {
            double pull = dot(inverseCorrelation[j], z);
            parts[j] = pull * pull / inverseCorrelation[j][j];
        }
        return parts;
    }

    private double[] standardised(double[] row) {
        if (row.length != mean.length)
            throw new IllegalArgumentException("row holds " + row.length + " features; it must hold " + mean.length);
        var z = new double[row.length];
        for (int j = 0; j < z.length; j++) z[j] = (row[j] - mean[j]) / sd[j];
        return z;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) sum += a[i] * b[i];
        return sum;
    }
}
