package org.tautlog.spc.timeweighted;

import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.IndividualsOptions;

/**
 * Frozen limits for exponentially weighted moving averages: all that phase 2 needs.
 *
 * <pre>
 * z[i] = lambda x[i] + (1 - lambda) z[i-1],  z[0] = centre
 * limits = centre +- width sigma inflation sqrt(lambda / (2 - lambda) (1 - (1 - lambda)^(2 i)))    [steady: without the last factor]
 * inflation^2 = (1 + r (1 - lambda)) / (1 - r (1 - lambda))      for a first-order autoregressive series, r its lag-1
 * </pre>
 *
 * Source: NIST/SEMATECH e-Handbook 6.3.2.4; exact form: Montgomery 9.2; inflation: Schmid, Sequential Analysis 16 (1997),
 * from memory.
 *
 * @param centre centre line, where the average starts
 * @param sigma standard deviation of single values, above 0
 * @param lambda weight of the newest value, above 0 up to 1
 * @param width distance of the limits in standard deviations of the average, above 0
 * @param inflation factor where neighbours resemble each other, at least 1; 1 for none
 * @param form whether limits grow with the first points
 */
public record EwmaLimits(
        double centre, double sigma, double lambda, double width, double inflation, EwmaOptions.Form form) {
    /** Checks that a chart can be drawn with these. */
    public EwmaLimits {
        if (!Double.isFinite(centre)) throw new IllegalArgumentException("centre is " + centre + "; it must be finite");
        if (!(sigma > 0 && Double.isFinite(sigma)))
            throw new IllegalArgumentException("sigma is " + sigma + "; it must be above 0 and finite");
        if (!(lambda > 0 && lambda <= 1))
            throw new IllegalArgumentException("lambda is " + lambda + "; it must lie above 0 and up to 1");
        if (!(width > 0)) throw new IllegalArgumentException("width is " + width + "; it must be above 0 sigma");
        if (!(inflation >= 1))
            throw new IllegalArgumentException("inflation is " + inflation + "; limits are never narrowed");
    }

    /**
     * Carries limits of single values over to their moving averages.
     *
     * @param values limits of single values, from their phase 1
     * @param options how the chart is made
     * @return the limits
     */
    public static EwmaLimits of(IndividualsLimits values, EwmaOptions options) {
        double r = options.neighbours() == IndividualsOptions.Neighbours.WIDEN
                ? values.neighbours().allowed() * (1 - options.lambda())
                : 0;
        return new EwmaLimits(
                values.centre(),
                values.sigma(),
                options.lambda(),
                options.width(),
                Math.sqrt((1 + r) / (1 - r)),
                options.form());
    }

    /**
     * {@return what an average is held against}
     *
     * @param point which point, from 1
     */
    public Chart.Lines lines(long point) {
        double reach = reach(point);
        return new Chart.Lines(centre - reach, centre, centre + reach, reach / width, 1);
    }

    /**
     * {@return distance of the limits from the centre line}
     *
     * @param point which point, from 1
     */
    public double reach(long point) {
        double grown = form == EwmaOptions.Form.STEADY ? 1 : 1 - Math.pow(1 - lambda, 2.0 * point);
        return width * sigma * inflation * Math.sqrt(lambda / (2 - lambda) * grown);
    }
}
