package org.tautlog.joint.study;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.stat.StatUtils;

/**
 * How one quantity is distributed over all draws.
 *
 * @param mean its mean, in the quantity's unit
 * @param standardDeviation its standard deviation, in the quantity's unit
 * @param least the least value drawn
 * @param most the greatest value drawn
 * @param percentiles percentiles in rising order
 */
public record Summary(double mean, double standardDeviation, double least, double most, List<Percentile> percentiles) {
    private static final double[] PERCENTS = {0.135, 1, 5, 25, 50, 75, 95, 99, 99.865};

    /**
     * One percentile.
     *
     * @param percent the share of draws at or below the value, in percent
     * @param value the value
     */
    public record Percentile(double percent, double value) {}

    /** Copies the list. */
    public Summary {
        percentiles = List.copyOf(percentiles);
    }

    static Summary of(double[] values) {
        var sorted = values.clone();
        Arrays.sort(sorted);
        var percentiles = Arrays.stream(PERCENTS)
                .mapToObj(percent -> new Percentile(percent, quantile(sorted, percent / 100)))
                .toList();
        return new Summary(
                StatUtils.mean(values),
                Math.sqrt(StatUtils.variance(values)),
                sorted[0],
                sorted[sorted.length - 1],
                percentiles);
    }

    /**
     * Scatter against the mean.
     *
     * @return standard deviation over mean; NaN where the mean is 0
     */
    public double coefficientOfVariation() {
        return mean == 0 ? Double.NaN : standardDeviation / mean;
    }

    /** The quantile by linear interpolation between ordered values. Source: Hyndman and Fan (1996), definition 7. */
    static double quantile(double[] sorted, double share) {
        var at = share * (sorted.length - 1);
        var below = (int) Math.floor(at);
        var above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
