package org.tautlog.spc.compare;

import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Sample;

/**
 * Whether paired differences, one for each block such as a spindle, lie about 0: Student's t of one sample.
 *
 * <pre> t = mean / (s / sqrt(n)),  n - 1 degrees of freedom </pre>
 *
 * Source: NIST/SEMATECH e-Handbook 7.2.2.
 *
 * @param mean mean difference
 * @param bounds its bounds
 * @param pValue chance of so large a mean where there is no difference
 * @param n how many differences
 */
public record MeanOfDifferences(double mean, Interval bounds, double pValue, int n) {
    /**
     * Tests differences.
     *
     * @param differences one for each block, at least 3, not all equal
     * @param confidence confidence of the bounds, above 0 and below 1
     * @return the test, or why there is none
     */
    public static Answer<MeanOfDifferences> of(double[] differences, double confidence) {
        return Sample.varying(differences, 3, "a test of differences").map(sample -> {
            int n = sample.size();
            double error = sample.sd() / Math.sqrt(n);
            var law = TDistribution.of(n - 1.0);
            double margin = law.inverseSurvivalProbability((1 - confidence) / 2) * error;
            double p = Math.min(1, 2 * law.survivalProbability(Math.abs(sample.mean()) / error));
            return new MeanOfDifferences(
                    sample.mean(), new Interval(sample.mean() - margin, sample.mean() + margin, confidence), p, n);
        });
    }
}
