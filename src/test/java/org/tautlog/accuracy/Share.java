package org.tautlog.accuracy;

import java.util.Locale;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * How many of how many, with the interval that holds the true share in 95 of 100 studies.
 *
 * <p>Source: Clopper and Pearson, Biometrika 26 (1934) 404-413, the exact binomial interval, two-sided.
 *
 * @param hits how many
 * @param n of how many, at least 1
 */
record Share(int hits, int n) {
    private static final double TAIL = 0.025;

    double value() {
        return (double) hits / n;
    }

    double low() {
        return hits == 0 ? 0 : BetaDistribution.of(hits, n - hits + 1.0).inverseCumulativeProbability(TAIL);
    }

    double high() {
        return hits == n ? 1 : BetaDistribution.of(hits + 1.0, n - hits).inverseCumulativeProbability(1 - TAIL);
    }

    /** Such as {@code 99.20 % (98.43 to 99.65)}. */
    String words() {
        return String.format(Locale.ROOT, "%.2f %% (%.2f to %.2f)", 100 * value(), 100 * low(), 100 * high());
    }
}
