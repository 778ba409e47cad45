package org.tautlog.spc.change;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Whether a series drifts, by ranks, and how fast: Mann-Kendall test with Sen's slope.
 *
 * <pre>{@code
 * S = sum over i < j of sign(x[j] - x[i])
 * var S = (n (n-1)(2n+5) - sum over ties of t (t-1)(2t+5)) / 18 * f
 * f = 1 + 2 / (n (n-1)(n-2)) sum over lags i of (n-i)(n-i-1)(n-i-2) (6 / pi) asin(r^i / 2)
 * z = (S - 1) / sqrt(var S) for S > 0, (S + 1) / sqrt(var S) for S < 0, else 0
 * slope = median of (x[j] - x[i]) / (j - i); bounds: the (N -+ z(a/2) sqrt(var S)) / 2-th slopes of N
 * tau-b = S / sqrt((N - ties)(N))
 * }</pre>
 *
 * r: how much each value resembles the one before, {@link Autocorrelation#allowed}; f is 1 where it is 0. The rank
 * correlation at lag i is that of a first-order autoregressive series of normal values.
 *
 * <p>Source: Mann, Econometrica 13 (1945); Kendall (1975); Sen, JASA 63 (1968); f: Hamed and Rao, Journal of Hydrology 204
 * (1998), from memory, checked by simulation in the tests.
 *
 * @param score S
 * @param variance variance of S in a series without drift, resemblance of neighbours allowed for
 * @param inflation f, the factor on that variance, at least 1
 * @param z standardised score
 * @param pValue chance of so large a score either way in a series without drift
 * @param tau Kendall's tau-b with time, from -1 to 1
 * @param slope drift for each step, in the units of the values
 * @param slopeBounds its confidence bounds
 * @param n how many values
 */
public record Trend(
        long score,
        double variance,
        double inflation,
        double z,
        double pValue,
        double tau,
        double slope,
        Interval slopeBounds,
        int n) {
    /** Beyond this the pairs would not fit into memory; take means of neighbouring values first. */
    private static final int MOST = 5000;

    /**
     * Tests a series of independent values.
     *
     * @param values values in time order, from 4 to 5000, not all equal
     * @param confidence confidence of the bounds on the slope, above 0 and below 1
     * @return the test, or why there is none
     */
    public static Answer<Trend> of(double[] values, double confidence) {
        return of(values, confidence, Autocorrelation.none());
    }

    /**
     * Tests a series whose neighbours may resemble each other.
     *
     * @param values values in time order, from 4 to 5000, not all equal
     * @param confidence confidence of the bounds on the slope, above 0 and below 1
     * @param neighbours how much they do; z, p and the bounds allow for it
     * @return the test, or why there is none
     */
    public static Answer<Trend> of(double[] values, double confidence, Autocorrelation neighbours) {
        if (!(confidence > 0 && confidence < 1))
            throw new IllegalArgumentException("confidence is " + confidence + "; it must lie between 0 and 1");
        if (values.length > MOST)
            return Answer.missing(
                    Reason.OUT_OF_DOMAIN,
                    values.length + " values; a trend is sought in up to " + MOST
                            + ", so take means of neighbours first");
        return Sample.varying(values, 4, "a trend")
                .map(sample -> of(sample, confidence, inflation(sample.size(), neighbours.allowed())));
    }

    private static double inflation(int n, double r) {
        double sum = 0;
        double power = 1;
        for (int i = 1; i < n - 2; i++) {
            power *= r;
            sum += (n - i) * (n - i - 1.0) * (n - i - 2.0) * 6 / Math.PI * Math.asin(power / 2);
        }
        return 1 + 2 * sum / (n * (n - 1.0) * (n - 2.0));
    }

    private static Trend of(Sample sample, double confidence, double inflation) {
        int n = sample.size();
        var slopes = new double[n * (n - 1) / 2];
        long score = 0;
        int pairs = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                double step = sample.at(j) - sample.at(i);
                score += (long) Math.signum(step);
                slopes[pairs++] = step / (j - i);
            }
        }
        Arrays.sort(slopes);
        var ties = ties(sample);
        double variance = (n * (n - 1.0) * (2.0 * n + 5) - ties.forVariance()) / 18 * inflation;
        double z = score == 0 ? 0 : (score - Long.signum(score)) / Math.sqrt(variance);
        var normal = NormalDistribution.of(0, 1);
        double reach = normal.inverseSurvivalProbability((1 - confidence) / 2) * Math.sqrt(variance);
        double below = Math.max(0, (pairs - reach) / 2 - 1);
        double above = Math.min(pairs - 1.0, (pairs + reach) / 2);
        double median = pairs % 2 == 1 ? slopes[pairs / 2] : slopes[pairs / 2 - 1] / 2 + slopes[pairs / 2] / 2;
        return new Trend(
                score,
                variance,
                inflation,
                z,
                Math.min(1, 2 * normal.survivalProbability(Math.abs(z))),
                score / Math.sqrt((double) pairs * (pairs - ties.pairs())),
                median,
                new Interval(slopes[(int) Math.round(below)], slopes[(int) Math.round(above)], confidence),
                n);
    }

    private record Ties(double forVariance, double pairs) {}

    private static Ties ties(Sample sample) {
        var x = sample.sorted();
        double variance = 0;
        double pairs = 0;
        for (int i = 0, run; i < x.length; i += run) {
            run = 1;
            while (i + run < x.length && x[i + run] == x[i]) run++;
            variance += run * (run - 1.0) * (2.0 * run + 5);
            pairs += run * (run - 1.0) / 2;
        }
        return new Ties(variance, pairs);
    }
}
