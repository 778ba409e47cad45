package org.tautlog.spc;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A share of items with its confidence bounds.
 *
 * @param value count over n, from 0 to 1
 * @param bounds confidence bounds, from 0 to 1
 * @param count items counted, from 0 to n
 * @param n items looked at, at least 1
 * @param method how the bounds were made
 */
public record Proportion(double value, Interval bounds, long count, long n, Method method) {
    /** How bounds of a proportion are made. */
    public enum Method {
        /** Exact by the binomial, Clopper and Pearson, Biometrika 26 (1934): never too narrow. */
        CLOPPER_PEARSON,
        /** By the score test, Wilson, JASA 22 (1927): right on average. */
        WILSON
    }

    /**
     * Bounds a share.
     *
     * <pre>
     * Clopper-Pearson: Beta(a/2; c, n - c + 1), Beta(1 - a/2; c + 1, n - c);  a = 1 - confidence
     * Wilson: (p + z^2/2n +- z sqrt(p(1-p)/n + z^2/4n^2)) / (1 + z^2/n)
     * </pre>
     *
     * @param count items counted
     * @param n items looked at
     * @param confidence confidence of the bounds, above 0 and below 1
     * @param method how the bounds are made
     * @return the share, or why there is none: nothing looked at, or a count outside 0 to n
     */
    public static Answer<Proportion> of(long count, long n, double confidence, Method method) {
        return of(count, n, confidence, method, Autocorrelation.none());
    }

    /**
     * Bounds a share of items in time order whose neighbours may resemble each other: counts and items enter the formulas
     * divided by the square of the factor on means.
     *
     * @param count items counted
     * @param n items looked at
     * @param confidence confidence of the bounds, above 0 and below 1
     * @param method how the bounds are made
     * @param neighbours how much neighbours resemble each other
     * @return the share, or why there is none: nothing looked at, or a count outside 0 to n
     */
    public static Answer<Proportion> of(
            long count, long n, double confidence, Method method, Autocorrelation neighbours) {
        if (n <= 0) return Answer.missing(Reason.EMPTY, n + " items looked at; a share needs at least 1");
        if (count < 0 || count > n)
            return Answer.missing(Reason.OUT_OF_DOMAIN, "count is " + count + "; it must lie from 0 to " + n);
        double worth = 1 / (neighbours.meanFactor() * neighbours.meanFactor());
        return Answer.of(new Proportion(
                (double) count / n, bounds(count * worth, n * worth, confidence, method), count, n, method));
    }

    private static Interval bounds(double count, double n, double confidence, Method method) {
        double tail = (1 - confidence) / 2;
        double p = count / n;
        double lower;
        double upper;
        if (method == Method.CLOPPER_PEARSON) {
            lower = count == 0 ? 0 : BetaDistribution.of(count, n - count + 1).inverseCumulativeProbability(tail);
            upper = count == n ? 1 : BetaDistribution.of(count + 1, n - count).inverseSurvivalProbability(tail);
        } else {
            double z = NormalDistribution.of(0, 1).inverseSurvivalProbability(tail);
            double centre = p + z * z / (2 * n);
            double half = z * Math.sqrt(p * (1 - p) / n + z * z / (4 * n * n));
            lower = Math.max(0, (centre - half) / (1 + z * z / n));
            upper = Math.min(1, (centre + half) / (1 + z * z / n));
        }
        return new Interval(lower, upper, confidence);
    }
}
