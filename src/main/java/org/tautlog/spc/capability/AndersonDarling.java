package org.tautlog.spc.capability;

import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Sample;

/**
 * Test of normality with mean and standard deviation estimated from the values.
 *
 * <pre>
 * A2 = -n - (1/n) sum (2i - 1) (ln F(x[i]) + ln(1 - F(x[n+1-i])))
 * A2* = A2 (1 + 0.75/n + 2.25/n^2)
 * p = exp(1.2937 - 5.709 A2* + 0.0186 A2*^2)          A2* >= 0.6
 *     exp(0.9177 - 4.279 A2* - 1.38 A2*^2)            0.34 to 0.6
 *     1 - exp(-8.318 + 42.796 A2* - 59.938 A2*^2)     0.2 to 0.34
 *     1 - exp(-13.436 + 101.14 A2* - 223.73 A2*^2)    below 0.2
 * </pre>
 *
 * <p>Reported: A2 itself, the adjustment of D'Agostino and Stephens as A2*, and its p. The NIST/SEMATECH e-Handbook prints
 * another adjustment, A2 (1 + 4/n - 25/n^2), in 1.3.5.14; it is not used here.
 *
 * <p>Source: D'Agostino and Stephens, Goodness-of-Fit Techniques (1986), table 4.9.
 *
 * @param statistic A2, unadjusted
 * @param adjusted A2*
 * @param pValue chance of so large an A2* in normal values, from 0 to 1
 * @param n how many values, at least 8
 */
public record AndersonDarling(double statistic, double adjusted, double pValue, int n) {
    private static final int LEAST = 8;
    /** Above this A2* the polynomial for p turns up again and p is below 1e-23. */
    private static final double LARGEST_FITTED = 10;

    /**
     * Tests values.
     *
     * @param values the values, at least 8, not all equal
     * @return the test, or why there is none
     */
    public static Answer<AndersonDarling> of(double[] values) {
        return Sample.varying(values, LEAST, "a test of normality").map(sample -> {
            int n = sample.size();
            double a2 = distance(sample, NormalDistribution.of(sample.mean(), sample.sd()));
            double adjusted = a2 * (1 + 0.75 / n + 2.25 / ((double) n * n));
            return new AndersonDarling(a2, adjusted, pValue(adjusted), n);
        });
    }

    /** A2 of values from any distribution; a value that cannot occur in it lies at the edge of what a double resolves. */
    static double distance(Sample sample, ContinuousDistribution distribution) {
        var x = sample.sorted();
        int n = x.length;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double below = Math.max(Double.MIN_NORMAL, distribution.cumulativeProbability(x[i]));
            double above = Math.max(Double.MIN_NORMAL, distribution.survivalProbability(x[n - 1 - i]));
            sum += (2 * i + 1) * (Math.log(below) + Math.log(above));
        }
        return -n - sum / n;
    }

    private static double pValue(double a) {
        if (a >= LARGEST_FITTED) return 0;
        if (a >= 0.6) return Math.min(1, Math.exp(1.2937 - 5.709 * a + 0.0186 * a * a));
        if (a >= 0.34) return Math.exp(0.9177 - 4.279 * a - 1.38 * a * a);
        if (a >= 0.2) return 1 - Math.exp(-8.318 + 42.796 * a - 59.938 * a * a);
        return 1 - Math.exp(-13.436 + 101.14 * a - 223.73 * a * a);
    }
}
