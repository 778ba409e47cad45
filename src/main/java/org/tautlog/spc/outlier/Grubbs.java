package org.tautlog.spc.outlier;

import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Sample;

/**
 * Test whether the value farthest from the mean belongs with the others, which are taken as normal.
 *
 * <pre>
 * G = max |x - mean| / s      [one-sided: (max - mean) / s or (mean - min) / s]
 * critical = (n - 1) / sqrt(n) sqrt(t^2 / (n - 2 + t^2)),  t upper a / n point (a / (2 n) two-sided), n - 2 degrees of freedom
 * </pre>
 *
 * <p>One stray only: two of them hide each other. Use {@link GeneralizedEsd} where there may be several.
 *
 * <p>Source: Grubbs, Technometrics 11 (1969); NIST/SEMATECH e-Handbook 1.3.5.17.1; ISO 5725-2.
 *
 * @param statistic G
 * @param critical the value that G exceeds in normal samples at the stated significance
 * @param index place of the suspect value, from 0
 * @param value the suspect value
 * @param pValue bound on the chance of so large a G in normal samples, from 0 to 1; exact while below about 0.1
 * @param significance chance of calling a good value a stray
 * @param side which values were suspected
 * @param n how many values
 */
public record Grubbs(
        double statistic,
        double critical,
        int index,
        double value,
        double pValue,
        double significance,
        Side side,
        int n) {
    /** Which values are suspected. */
    public enum Side {
        /** The largest. */
        LARGEST,
        /** The smallest. */
        SMALLEST,
        /** Whichever lies farther out. */
        EITHER
    }

    /**
     * Tests values.
     *
     * @param values the values, at least 3, not all equal
     * @param significance chance of calling a good value a stray, above 0 and below 1
     * @param side which values are suspected
     * @return the test, or why there is none
     */
    public static Answer<Grubbs> of(double[] values, double significance, Side side) {
        if (!(significance > 0 && significance < 1))
            throw new IllegalArgumentException("significance is " + significance + "; it must lie between 0 and 1");
        return Sample.varying(values, 3, "a Grubbs test").map(sample -> {
            int n = sample.size();
            double mean = sample.mean();
            int suspect = 0;
            for (int i = 1; i < n; i++)
                if (farness(sample.at(i) - mean, side) > farness(sample.at(suspect) - mean, side)) suspect = i;
            double g = Math.max(0, farness(sample.at(suspect) - mean, side) / sample.sd());
            double tests = side == Side.EITHER ? 2.0 * n : n;
            return new Grubbs(
                    g,
                    critical(n, significance, side),
                    suspect,
                    sample.at(suspect),
                    Math.min(1, tests * tail(g, n)),
                    significance,
                    side,
                    n);
        });
    }

    /**
     * {@return the value that G exceeds in normal samples at a significance}
     *
     * @param n sample size, at least 3
     * @param significance above 0 and below 1
     * @param side which values are suspected
     */
    public static double critical(int n, double significance, Side side) {
        if (n < 3) throw new IllegalArgumentException("n is " + n + "; it must be at least 3");
        double tests = side == Side.EITHER ? 2.0 * n : n;
        double t = TDistribution.of(n - 2).inverseSurvivalProbability(significance / tests);
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

    /** {@return whether the suspect value is called a stray} */
    public boolean rejected() {
        return statistic > critical;
    }

    private static double farness(double deviation, Side side) {
        return switch (side) {
            case LARGEST -> deviation;
            case SMALLEST -> -deviation;
            case EITHER -> Math.abs(deviation);
        };
    }

    private static double tail(double g, int n) {
        double room = (n - 1.0) * (n - 1) - n * g * g;
        if (room <= 0) return 0;
        return TDistribution.of(n - 2).survivalProbability(g * Math.sqrt(n * (n - 2.0) / room));
    }
}
