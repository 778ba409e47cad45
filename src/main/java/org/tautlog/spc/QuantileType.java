package org.tautlog.spc;

/**
 * How a quantile is read between two ordered values.
 *
 * <pre> place = a + p (n + 1 - a - b'), value = x[k] + fraction (x[k+1] - x[k]) </pre>
 *
 * Source: Hyndman and Fan, The American Statistician 50 (1996); NIST/SEMATECH e-Handbook 7.2.6.2.
 */
public enum QuantileType {
    /** Place p (n + 1): the handbook's own choice. */
    R6,
    /** Place 1 + p (n - 1). */
    R7,
    /** Place 1/3 + p (n + 1/3): nearly median-unbiased for any distribution. */
    R8;

    /**
     * Reads one quantile; beyond the outermost values it stays at them.
     *
     * @param sample the values
     * @param p the fraction below, from 0 to 1
     * @return the quantile in the units of the values
     */
    public double of(Sample sample, double p) {
        return ofSorted(sample.sorted(), p);
    }

    /**
     * Reads one quantile of values that are already in order: many quantiles of one sample cost one sort.
     *
     * @param x the values, smallest first, at least 1
     * @param p the fraction below, from 0 to 1
     * @return the quantile in the units of the values
     */
    public double ofSorted(double[] x, double p) {
        if (!(p >= 0 && p <= 1)) throw new IllegalArgumentException("p is " + p + "; a fraction lies from 0 to 1");
        int n = x.length;
        double place = switch (this) {
            case R6 -> p * (n + 1);
            case R7 -> 1 + p * (n - 1);
            case R8 -> 1.0 / 3 + p * (n + 1.0 / 3);
        };
        int k = (int) Math.floor(place);
        if (k < 1) return x[0];
        if (k >= n) return x[n - 1];
        return x[k - 1] + (place - k) * (x[k] - x[k - 1]);
    }
}
