package org.tautlog.spc.chart;

import org.tautlog.spc.Autocorrelation;

/**
 * Frozen limits for single values and their moving ranges: all that phase 2 needs.
 *
 * @param centre centre line
 * @param shortSigma standard deviation from neighbour to neighbour, as estimated
 * @param sigma standard deviation that the limits use: the short one, widened where neighbours resemble each other
 * @param width distance of the limits from the centre line in {@code sigma}
 * @param movingRangeCentre centre line of the moving ranges
 * @param movingRangeUpper upper limit of the moving ranges; the lower one is 0
 * @param n how many values the limits rest on
 * @param spread how the standard deviation was estimated
 * @param neighbours how much neighbouring values resemble each other
 */
public record IndividualsLimits(
        double centre,
        double shortSigma,
        double sigma,
        double width,
        double movingRangeCentre,
        double movingRangeUpper,
        int n,
        IndividualsSpread spread,
        Autocorrelation neighbours) {
    /** Checks the arguments. */
    public IndividualsLimits {
        if (!Double.isFinite(centre)) throw new IllegalArgumentException("centre is " + centre + "; it must be finite");
        if (!(sigma > 0 && Double.isFinite(sigma)))
            throw new IllegalArgumentException("sigma is " + sigma + "; it must be above 0 and finite");
        if (!(width > 0)) throw new IllegalArgumentException("width is " + width + "; it must be above 0 sigma");
    }

    /** Limits from a centre and a spread: where neighbours resemble each other, a spread of moving ranges is widened. */
    static IndividualsLimits of(
            double centre, double shortSigma, int n, Autocorrelation neighbours, IndividualsOptions options) {
        var pair = ChartConstants.of(2);
        double factor = options.neighbours() == IndividualsOptions.Neighbours.WIDEN
                        && options.spread() != IndividualsSpread.STANDARD_DEVIATION
                        && options.spread() != IndividualsSpread.MEDIAN_DEVIATION
                ? neighbours.movingRangeFactor()
                : 1;
        double rangeCentre = shortSigma * pair.d2();
        return new IndividualsLimits(
                centre,
                shortSigma,
                shortSigma * factor,
                options.width(),
                rangeCentre,
                rangeCentre + options.width() * shortSigma * pair.d3(),
                n,
                options.spread(),
                neighbours);
    }

    /**
     * {@return limits from a centre and a standard deviation that are taken as known}
     *
     * @param centre where the process should lie
     * @param sigma standard deviation of single values, above 0
     * @param options how the chart is made
     */
    public static IndividualsLimits stated(double centre, double sigma, IndividualsOptions options) {
        return of(centre, sigma, 0, Autocorrelation.none(), options);
    }

    /** {@return what single values are held against} */
    public Chart.Lines lines() {
        return new Chart.Lines(lower(), centre, upper(), sigma, 1);
    }

    /** {@return what moving ranges are held against} */
    public Chart.Lines movingRangeLines() {
        return new Chart.Lines(0, movingRangeCentre, movingRangeUpper, shortSigma, 2);
    }

    /** {@return lower control limit} */
    public double lower() {
        return centre - width * sigma;
    }

    /** {@return upper control limit} */
    public double upper() {
        return centre + width * sigma;
    }
}
