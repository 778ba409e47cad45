package org.tautlog.spc;

import java.util.Arrays;
import java.util.List;

/**
 * How much each value resembles the one before it.
 *
 * <pre>
 * plain:             r = sum (x[i] - mean)(x[i+1] - mean) / sum (x[i] - mean)^2
 * from differences:  r = q - 2.7 (1 - q / 2) / n,  q = 1 + 2 r(d),  d[i] = x[i+1] - x[i],  r(d) their autocorrelation
 * noise bound:       1.645 / sqrt(n);  from differences 1.645 sqrt(2 / (n - 4))
 * </pre>
 *
 * <p>In bolts, friction and lots change slowly, so neighbours resemble each other; the moving range then understates the
 * spread and limits must widen. A single jump or a drift also raises the plain coefficient, and limits widened by it would
 * hide the very change; charts therefore use the one from differences, those beyond four robust standard deviations left out,
 * which a jump does not touch. Three would also cut the tails of a quiet series and call it alike. Only a coefficient above its noise bound widens limits.
 *
 * <p>Source: plain r as in NIST StRD univariate; the rest from memory, for a first-order autoregressive series, where the
 * differences have r(d) = -(1 - r) / 2; noise bounds by Bartlett's formula. The term in 1 / n and the
 * 4 in the bound are this project's own, from simulated series of 20 to 1000 values: without them one quiet series in 7 of 20
 * values would be called alike, with them one in 14.
 *
 * @param lagOne the coefficient r, from -1 to 1
 * @param noiseBound what an independent series exceeds once in 20 times, one-sided
 * @param n how many values it rests on
 */
public record Autocorrelation(double lagOne, double noiseBound, int n) {
    /** No widening of limits goes beyond what this coefficient asks for; nearer to 1 the series is a drift. */
    private static final double LARGEST_ALLOWED = 0.95;

    private static final double ONE_IN_20 = 1.645;
    private static final int LEAST_FOR_DIFFERENCES = 20;
    private static final int ROUNDING_STEPS = 64;
    private static final double JUMP = 4;
    private static final double SMALL_SAMPLE = 2.7;
    private static final double LOST = 4;

    /** Checks the ranges. */
    public Autocorrelation {
        if (!(Math.abs(lagOne) <= 1))
            throw new IllegalArgumentException("lagOne is " + lagOne + "; a correlation lies from -1 to 1");
        if (!(noiseBound >= 0))
            throw new IllegalArgumentException("noiseBound is " + noiseBound + "; it must not be negative");
    }

    /**
     * Measures a series by the plain coefficient.
     *
     * @param values the values in time order, at least 3, not all equal
     * @return the coefficient, or why there is none
     */
    public static Answer<Autocorrelation> of(double[] values) {
        return Sample.varying(values, 3, "a lag-1 autocorrelation")
                .map(sample -> new Autocorrelation(plain(sample), ONE_IN_20 / Math.sqrt(sample.size()), sample.size()));
    }

    /**
     * Measures a series by its differences, so that jumps and drifts hardly count.
     *
     * @param values the values in time order, at least 20, whose differences are not all equal
     * @return the coefficient, or why there is none
     */
    public static Answer<Autocorrelation> ofDifferences(double[] values) {
        return Sample.of(values, LEAST_FOR_DIFFERENCES, "a lag-1 autocorrelation from differences")
                .flatMap(sample -> {
                    var steps = new double[sample.size() - 1];
                    for (int i = 0; i < steps.length; i++) steps[i] = sample.at(i + 1) - sample.at(i);
                    return Sample.varying(steps, 3, "a lag-1 autocorrelation from differences");
                })
                .map(steps -> {
                    int n = steps.size() + 1;
                    double q = 1 + 2 * withoutJumps(steps, rounding(values));
                    double r = Math.max(-1, Math.min(1, q - SMALL_SAMPLE * (1 - q / 2) / n));
                    return new Autocorrelation(r, ONE_IN_20 * Math.sqrt(2 / (n - LOST)), n);
                });
    }

    /**
     * Measures several series of one kind together by their differences: the mean coefficient, weighted by length.
     *
     * @param series series in time order; those shorter than 20, or with differences all equal, do not count
     * @param independent how many of the series vary on their own, above 0; fewer than there are where they share a cause
     * @return the coefficient, or why there is none
     */
    public static Answer<Autocorrelation> pooled(List<double[]> series, double independent) {
        var found = series.stream()
                .flatMap(one -> ofDifferences(one).found().stream())
                .toList();
        int n = found.stream().mapToInt(Autocorrelation::n).sum();
        if (n == 0)
            return Answer.missing(
                    Reason.TOO_FEW,
                    "no series of at least " + LEAST_FOR_DIFFERENCES + " values whose differences vary");
        double r = found.stream().mapToDouble(one -> one.n() * one.lagOne()).sum() / n;
        double counted = (n - LOST * found.size()) * Math.min(1, independent / found.size());
        return Answer.of(new Autocorrelation(r, ONE_IN_20 * Math.sqrt(2 / counted), n));
    }

    /** {@return no autocorrelation: what a chart uses that cannot allow for it} */
    public static Autocorrelation none() {
        return new Autocorrelation(0, 1, 0);
    }

    /** Autocorrelation of the differences but for those beyond four robust standard deviations, and their pairs. */
    private static double withoutJumps(Sample steps, double rounding) {
        double middle = steps.median();
        double reach = JUMP * 1.4826 * steps.medianDeviation();
        if (reach <= rounding) return plain(steps);
        double squares = 0;
        double products = 0;
        int singles = 0;
        int pairs = 0;
        for (int i = 0; i < steps.size(); i++) {
            double d = steps.at(i) - middle;
            if (Math.abs(d) > reach) continue;
            squares += d * d;
            singles++;
            if (i == 0 || Math.abs(steps.at(i - 1) - middle) > reach) continue;
            products += d * (steps.at(i - 1) - middle);
            pairs++;
        }
        return pairs == 0 ? plain(steps) : products / pairs / (squares / singles);
    }

    /** How far apart differences may lie that are equal but for the last binary digits of the values. */
    private static double rounding(double[] values) {
        return ROUNDING_STEPS
                * Math.ulp(Arrays.stream(values).map(Math::abs).max().orElse(0));
    }

    private static double plain(Sample sample) {
        double mean = sample.mean();
        double together = 0;
        for (int i = 0; i + 1 < sample.size(); i++) together += (sample.at(i) - mean) * (sample.at(i + 1) - mean);
        return Math.max(-1, Math.min(1, together / sample.sumOfSquares()));
    }

    /** {@return the coefficient where it lies above its noise bound, else 0; never above 0.95} */
    public double allowed() {
        return lagOne > noiseBound ? Math.min(lagOne, LARGEST_ALLOWED) : 0;
    }

    /** {@return the factor on a moving-range sigma for limits of single values: 1 / sqrt(1 - r)} */
    public double movingRangeFactor() {
        return 1 / Math.sqrt(1 - allowed());
    }

    /**
     * {@return how many independent values would tell a mean as well: n (1 - r) / (1 + r), at least 2}
     *
     * @param values how many values there are, at least 2
     */
    public int worth(int values) {
        return Math.max(2, (int) Math.round(values / (meanFactor() * meanFactor())));
    }

    /** {@return the factor on the limits of means and of exponentially weighted means: sqrt((1 + r) / (1 - r))} */
    public double meanFactor() {
        return Math.sqrt((1 + allowed()) / (1 - allowed()));
    }
}
