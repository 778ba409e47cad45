package org.tautlog.spc.compare;

import java.util.Arrays;
import java.util.Comparator;

/** How p values of several tests are adjusted, so that many looks do not find what is not there. */
public enum Adjustment {
    /** Left as they are: for one planned test. */
    NONE,
    /**
     * Step-down Bonferroni: the chance of any false finding stays below the level.
     *
     * <pre>{@code p[(i)] -> max over j <= i of min(1, (m - j + 1) p[(j)]) }</pre>
     *
     * Source: Holm, Scandinavian Journal of Statistics 6 (1979).
     */
    HOLM,
    /**
     * Step-up: the share of false findings among the findings stays below the level on average.
     *
     * <pre>{@code p[(i)] -> min over j >= i of min(1, m p[(j)] / j) }</pre>
     *
     * Source: Benjamini and Hochberg, Journal of the Royal Statistical Society B 57 (1995).
     */
    BENJAMINI_HOCHBERG;

    /**
     * Adjusts.
     *
     * @param pValues p values of all tests that were made, each from 0 to 1
     * @return adjusted p values in the same order
     */
    public double[] adjust(double[] pValues) {
        for (double p : pValues)
            if (!(p >= 0 && p <= 1)) throw new IllegalArgumentException("p is " + p + "; it must lie from 0 to 1");
        int m = pValues.length;
        var order = new Integer[m];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> pValues[i]));
        var adjusted = pValues.clone();
        if (this == HOLM) {
            double least = 0;
            for (int i = 0; i < m; i++) {
                least = Math.max(least, Math.min(1, (m - i) * pValues[order[i]]));
                adjusted[order[i]] = least;
            }
        } else if (this == BENJAMINI_HOCHBERG) {
            double most = 1;
            for (int i = m - 1; i >= 0; i--) {
                most = Math.min(most, m * pValues[order[i]] / (i + 1));
                adjusted[order[i]] = most;
            }
        }
        return adjusted;
    }
}
