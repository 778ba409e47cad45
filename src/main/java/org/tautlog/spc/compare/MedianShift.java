package org.tautlog.spc.compare;

import java.util.Locale;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * How far a median moved from one sample to another, strays hardly counting.
 *
 * <pre>
 * se(median) = (x[(n-c+1)] - x[(c)]) / (2 z),  c = (n + 1)/2 - z sqrt(n/4),  z the 0.995 point of the normal
 * shift      = median(after) - median(before) +- z' sqrt(se1^2 + se2^2)
 * </pre>
 *
 * <ul>
 *   <li>Where neighbours resemble each other, each standard error is widened by {@link Autocorrelation#meanFactor()}.
 *   <li>Fewer than {@value #LEAST} values on either side: no answer.
 * </ul>
 *
 * Source: McKean and Schrader, Communications in Statistics B 13 (1984); from memory.
 *
 * @param before median of the first sample
 * @param after median of the second
 * @param shift after less before
 * @param bounds bounds of the shift
 * @param pValue chance of so large a shift between samples of one median
 * @param nBefore values of the first sample
 * @param nAfter values of the second
 */
public record MedianShift(
        double before, double after, double shift, Interval bounds, double pValue, int nBefore, int nAfter) {
    /** Fewest values of a sample. */
    public static final int LEAST = 10;

    private static final double QUANTILE = 0.995;

    /**
     * Compares two samples, each in time order.
     *
     * @param before values of the first
     * @param after values of the second
     * @param confidence confidence of the bounds, above 0 and below 1
     * @return the shift, or why there is none to give
     */
    public static Answer<MedianShift> of(double[] before, double[] after, double confidence) {
        return Sample.of(before, LEAST, "a shift of medians")
                .flatMap(one -> Sample.of(after, LEAST, "a shift of medians")
                        .flatMap(other -> between(one, other, confidence)));
    }

    private static Answer<MedianShift> between(Sample one, Sample other, double confidence) {
        double error = Math.hypot(standardError(one), standardError(other));
        double shift = other.median() - one.median();
        if (!(error > Sample.LEAST_SPREAD)) {
            return Answer.missing(
                    Reason.NO_SPREAD,
                    String.format(
                            Locale.ROOT,
                            "both medians stand on equal values, %s and %s",
                            one.median(),
                            other.median()));
        }
        var law = TDistribution.of(Math.min(one.size(), other.size()) - 1.0);
        double margin = law.inverseSurvivalProbability((1 - confidence) / 2) * error;
        return Answer.of(new MedianShift(
                one.median(),
                other.median(),
                shift,
                new Interval(shift - margin, shift + margin, confidence),
                Math.min(1, 2 * law.survivalProbability(Math.abs(shift) / error)),
                one.size(),
                other.size()));
    }

    private static double standardError(Sample sample) {
        double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(QUANTILE);
        int n = sample.size();
        var sorted = sample.sorted();
        int c = (int) Math.max(1, Math.round((n + 1) / 2.0 - z * Math.sqrt(n / 4.0)));
        double widened = Autocorrelation.ofDifferences(sample.toArray())
                .found()
                .map(Autocorrelation::meanFactor)
                .orElse(1.0);
        return widened * (sorted[n - c] - sorted[c - 1]) / (2 * z);
    }
}
