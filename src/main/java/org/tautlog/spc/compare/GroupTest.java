package org.tautlog.spc.compare;

/**
 * A test of whether groups differ.
 *
 * @param method which test
 * @param statistic F, t squared or H
 * @param freedomBetween degrees of freedom between groups
 * @param freedomWithin degrees of freedom within groups, 0 where the test has none
 * @param pValue chance of so large a statistic in groups that do not differ
 * @param groups how many groups
 * @param n how many values in all
 */
public record GroupTest(
        Method method,
        double statistic,
        double freedomBetween,
        double freedomWithin,
        double pValue,
        int groups,
        int n) {
    /** Which test. */
    public enum Method {
        /** Means, spreads taken as equal. */
        ANOVA,
        /** Means, each group with its own spread. */
        WELCH,
        /** Spreads, by absolute deviations from the medians. */
        BROWN_FORSYTHE,
        /** Levels, by ranks. */
        KRUSKAL_WALLIS
    }
}
