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

    /** {@return lower control limit} */
    public double lower() {
        return centre - width * sigma;
    }

    /** {@return upper control limit} */
    public double upper() {
        return centre + width * sigma;
    }
}
