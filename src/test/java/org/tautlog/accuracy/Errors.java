package org.tautlog.accuracy;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/** The errors of one feature over one cell; what was not found has none. */
final class Errors {
    private static final double SHARE = 0.95;
    private static final double NORMAL_97_5 = 1.959964;

    private final double[] sorted;
    private final double[] absolute;
    private final int n;
    private final double aim;

    /**
     * @param found errors of the curves in which the feature was found
     * @param n of how many curves
     * @param aim what the error should not exceed
     */
    Errors(double[] found, int n, double aim) {
        sorted = found.clone();
        Arrays.sort(sorted);
        absolute = Arrays.stream(found).map(Math::abs).sorted().toArray();
        this.n = n;
        this.aim = aim;
    }

    Share found() {
        return new Share(sorted.length, n);
    }

    /** Found and within the aim. */
    Share within() {
        return new Share((int) Arrays.stream(absolute).filter(e -> e <= aim).count(), n);
    }

    double bias() {
        return Arrays.stream(sorted).average().orElse(Double.NaN);
    }

    double spread() {
        double mean = bias();
        return Math.sqrt(
                Arrays.stream(sorted).map(e -> (e - mean) * (e - mean)).sum() / Math.max(1, sorted.length - 1));
    }

    /** Half of the 95 % interval of {@link #bias}, the mean of many. */
    double biasHalf() {
        return NORMAL_97_5 * spread() / Math.sqrt(sorted.length);
    }

    /** The error that 95 of 100 found features do not exceed. */
    double usual() {
        return at((int) (SHARE * (absolute.length - 1)));
    }

    /** Lower end of the 95 % interval of {@link #usual}, from order statistics: no shape is assumed. */
    double usualLow() {
        return at(rank(0.025) - 1);
    }

    double usualHigh() {
        return at(rank(0.975));
    }

    private int rank(double probability) {
        return absolute.length == 0
                ? 0
                : BinomialDistribution.of(absolute.length, SHARE).inverseCumulativeProbability(probability);
    }

    private double at(int i) {
        return absolute.length == 0 ? Double.NaN : absolute[Math.max(0, Math.min(absolute.length - 1, i))];
    }
}
