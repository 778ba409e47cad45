package org.tautlog.spc.change;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Sample;

/**
 * The best split of a series into two means by least squares, with its p value and confidence set.
 *
 * <pre>{@code
 * t = sqrt((n - 2) SSB / RSS) at the best split, z = normal value with t's tail probability, divided by the
 *     autocorrelation's mean factor
 * p = z f(z) ((1 - 1/z^2) ln((1 - h)^2 / h^2) + 4 / z^2),  h = shortest segment / n
 * confidence set: splits with (n / 2) ln(RSS / RSS best) <= -ln(1 - sqrt(confidence)) meanFactor^2
 * }</pre>
 *
 * SSB, RSS: sums of squares between and within the two parts; f: density of the standard normal.
 *
 * <p>Source: p: Gombay and Horvath, Journal of Multivariate Analysis 56 (1996); confidence set: Siegmund, International
 * Statistical Review 56 (1988), from the limit law of a two-sided walk with drift; both from memory, both checked by
 * simulation in the tests.
 */
record Split(int index, int earliest, int latest, double pValue, Autocorrelation neighbours) {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    static Split best(Sample sample, ChangeOptions options) {
        int n = sample.size();
        double mean = sample.mean();
        double total = sample.sumOfSquares();
        int first = options.shortestSegment();
        var between = new double[n + 1];
        double sum = 0;
        int best = first;
        for (int k = 1; k <= n - first; k++) {
            sum += sample.at(k - 1) - mean;
            if (k < first) continue;
            between[k] = sum * sum * n / ((double) k * (n - k));
            if (between[k] > between[best]) best = k;
        }
        var rest = residuals(sample, best);
        var neighbours = Autocorrelation.ofDifferences(sample.toArray()).found().orElse(Autocorrelation.none());
        double factor = neighbours.meanFactor();
        double within = 0;
        for (double r : rest) within += r * r;
        double rounding = 1e-24 * total;
        if (within <= rounding) return new Split(best, best, best, 0, neighbours);
        double cut = within * Math.exp(-Math.log1p(-Math.sqrt(options.confidence())) * factor * factor * 2 / n);
        int earliest = best;
        int latest = best;
        for (int k = first; k <= n - first; k++) {
            if (total - between[k] > cut) continue;
            earliest = Math.min(earliest, k);
            latest = Math.max(latest, k);
        }
        double t = Math.sqrt((n - 2) * between[best] / within);
        return new Split(best, earliest, latest, pValue(t, n, factor, (double) first / n), neighbours);
    }

    static double[] residuals(Sample sample, int split) {
        var rest = sample.toArray();
        double before = part(sample, 0, split).mean();
        double after = part(sample, split, rest.length).mean();
        for (int i = 0; i < rest.length; i++) rest[i] -= i < split ? before : after;
        return rest;
    }

    static Sample part(Sample sample, int from, int to) {
        return Sample.derived(java.util.Arrays.copyOfRange(sample.toArray(), from, to));
    }

    private static double pValue(double t, int n, double factor, double h) {
        double tail = TDistribution.of(n - 2).survivalProbability(t);
        double z = tail > 0 ? NORMAL.inverseSurvivalProbability(tail) / factor : Double.POSITIVE_INFINITY;
        if (Double.isInfinite(z)) return 0;
        if (z < 1.5) return 1;
        double reach = Math.log((1 - h) * (1 - h) / (h * h));
        return Math.min(1, z * NORMAL.density(z) * ((1 - 1 / (z * z)) * reach + 4 / (z * z)));
    }
}
