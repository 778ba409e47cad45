package org.tautlog.spc.gauge;

import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * How far a gauge reads off a reference.
 *
 * <pre> bias = mean reading - reference;  bounds: bias +- t s / sqrt(n),  t for n - 1 degrees of freedom </pre>
 *
 * Source: AIAG, Measurement Systems Analysis, 4th edition, chapter III-B, bias by independent samples.
 *
 * @param value the bias, in the units of the readings
 * @param bounds its confidence bounds; 0 outside them means a bias
 * @param repeatability standard deviation of the readings
 * @param n how many readings
 */
public record Bias(double value, Interval bounds, double repeatability, int n) {
    /**
     * Measures a bias.
     *
     * @param readings repeated readings of one reference, at least 2, not all equal
     * @param reference the reference value
     * @param confidence confidence of the bounds, above 0 and below 1
     * @return the bias, or why there is none
     */
    public static Answer<Bias> of(double[] readings, double reference, double confidence) {
        if (!Double.isFinite(reference))
            return Answer.missing(Reason.NOT_FINITE, "the reference is " + reference + "; it must be a number");
        return Sample.varying(readings, 2, "a bias").map(sample -> {
            int n = sample.size();
            double bias = sample.mean() - reference;
            double margin = TDistribution.of(n - 1).inverseSurvivalProbability((1 - confidence) / 2)
                    * sample.sd()
                    / Math.sqrt(n);
            return new Bias(bias, new Interval(bias - margin, bias + margin, confidence), sample.sd(), n);
        });
    }
}
