package org.tautlog.spc.change;

import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Sample;

/**
 * Pettitt's test, a change of level by ranks: a cross-check of {@link Changes} that strays cannot bend.
 *
 * <pre> U[k] = sum over i &lt;= k &lt; j of sign(x[j] - x[i]),  K = max |U[k]|,  p = 2 exp(-6 (K / f)^2 / (n^3 + n^2)) </pre>
 *
 * f: factor on means where neighbours resemble each other, {@link Autocorrelation#meanFactor}, else 1; K is a sum of ranks.
 *
 * <p>Source: Pettitt, Applied Statistics 28 (1979); f is this project's own, checked by simulation in the tests.
 *
 * @param statistic K
 * @param index first place after the change, from 1
 * @param pValue chance of so large a K in a steady series, approximate, at most 1
 * @param n how many values
 */
public record Pettitt(long statistic, int index, double pValue, int n) {
    /**
     * Tests a series of independent values.
     *
     * @param values values in time order, at least 4, not all equal
     * @return the test, or why there is none
     */
    public static Answer<Pettitt> of(double[] values) {
        return of(values, Autocorrelation.none());
    }

    /**
     * Tests a series whose neighbours may resemble each other.
     *
     * @param values values in time order, at least 4, not all equal
     * @param neighbours how much they do; p allows for it
     * @return the test, or why there is none
     */
    public static Answer<Pettitt> of(double[] values, Autocorrelation neighbours) {
        return Sample.varying(values, 4, "a change of level by ranks").map(sample -> {
            int n = sample.size();
            long u = 0;
            long best = 0;
            int at = 1;
            var sorted = sample.sorted();
            for (int k = 0; k < n - 1; k++) {
                u += Sample.above(sorted, sample.at(k)) - Sample.below(sorted, sample.at(k));
                if (Math.abs(u) <= best) continue;
                best = Math.abs(u);
                at = k + 1;
            }
            double cube = (double) n * n * n + (double) n * n;
            double ranks = best / neighbours.meanFactor();
            return new Pettitt(best, at, Math.min(1, 2 * Math.exp(-6 * ranks * ranks / cube)), n);
        });
    }
}
