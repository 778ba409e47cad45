package org.tautlog.spc.gauge;

import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Whether a gauge's bias changes over its range: a straight line of bias against reference.
 *
 * <pre>
 * slope = sum (x - X)(y - Y) / sum (x - X)^2,  s^2 = sum of squared residuals / (n - 2)
 * se(slope) = s / sqrt(sum (x - X)^2),  se(intercept) = s sqrt(1 / n + X^2 / sum (x - X)^2)
 * </pre>
 *
 * x reference, y reading less reference; X, Y their means.
 *
 * <p>Source: AIAG, Measurement Systems Analysis, 4th edition, chapter III-B, linearity; ordinary least squares.
 *
 * @param slope change of bias for each unit of reference; 0 within its bounds means linear
 * @param slopeBounds its confidence bounds
 * @param slopeError its standard error
 * @param intercept bias at reference 0
 * @param interceptBounds its confidence bounds
 * @param interceptError its standard error
 * @param residual standard deviation about the line
 * @param determination share of the bias's variance that the line explains, from 0 to 1
 * @param n how many readings
 */
public record Linearity(
        double slope,
        Interval slopeBounds,
        double slopeError,
        double intercept,
        Interval interceptBounds,
        double interceptError,
        double residual,
        double determination,
        int n) {
    /**
     * Fits the line.
     *
     * @param references reference value of each reading, at least two different ones
     * @param readings the readings, as many, at least 3
     * @param confidence confidence of the bounds, above 0 and below 1
     * @return the line, or why there is none
     */
    public static Answer<Linearity> of(double[] references, double[] readings, double confidence) {
        if (references.length != readings.length)
            return Answer.missing(
                    Reason.UNEQUAL, references.length + " references and " + readings.length + " readings");
        return Sample.varying(references, 3, "linearity over references")
                .flatMap(x -> Sample.of(readings, 3, "linearity").map(y -> fit(x, y, confidence)));
    }

    private static Linearity fit(Sample x, Sample reading, double confidence) {
        int n = x.size();
        var bias = new double[n];
        for (int i = 0; i < n; i++) bias[i] = reading.at(i) - x.at(i);
        var y = Sample.derived(bias);
        double mx = x.mean();
        double my = y.mean();
        double sxx = x.sumOfSquares();
        double sxy = 0;
        for (int i = 0; i < n; i++) sxy += (x.at(i) - mx) * (y.at(i) - my);
        double slope = sxy / sxx;
        double rest = 0;
        for (int i = 0; i < n; i++) {
            double r = y.at(i) - my - slope * (x.at(i) - mx);
            rest += r * r;
        }
        double s = Math.sqrt(rest / (n - 2));
        double slopeError = s / Math.sqrt(sxx);
        double interceptError = s * Math.sqrt(1.0 / n + mx * mx / sxx);
        double t = TDistribution.of(n - 2).inverseSurvivalProbability((1 - confidence) / 2);
        double intercept = my - slope * mx;
        double syy = y.sumOfSquares();
        return new Linearity(
                slope,
                new Interval(slope - t * slopeError, slope + t * slopeError, confidence),
                slopeError,
                intercept,
                new Interval(intercept - t * interceptError, intercept + t * interceptError, confidence),
                interceptError,
                s,
                syy > 0 ? Math.max(0, 1 - rest / syy) : 1,
                n);
    }
}
