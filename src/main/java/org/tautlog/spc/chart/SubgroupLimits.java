package org.tautlog.spc.chart;

import org.tautlog.spc.Autocorrelation;

/**
 * Frozen limits for subgroups of any size: all that phase 2 needs.
 *
 * @param centre centre line of the means
 * @param sigma standard deviation of single values within subgroups
 * @param width distance of the limits from the centre line in standard deviations
 * @param spread what told the spread, and which spread chart is drawn
 * @param meanFactor factor on the limits of the means where neighbours resemble each other; 1 for none
 * @param subgroups how many subgroups the limits rest on
 * @param values how many values they hold
 * @param neighbours how much neighbouring values resemble each other
 */
public record SubgroupLimits(
        double centre,
        double sigma,
        double width,
        SubgroupSpread spread,
        double meanFactor,
        int subgroups,
        int values,
        Autocorrelation neighbours) {
    /** Checks that a chart can be drawn with these. */
    public SubgroupLimits {
        if (!Double.isFinite(centre)) throw new IllegalArgumentException("centre is " + centre + "; it must be finite");
        if (!(sigma > 0 && Double.isFinite(sigma)))
            throw new IllegalArgumentException("sigma is " + sigma + "; it must be above 0 and finite");
        if (!(width > 0)) throw new IllegalArgumentException("width is " + width + "; it must be above 0 sigma");
        if (!(meanFactor >= 1))
            throw new IllegalArgumentException("meanFactor is " + meanFactor + "; limits are never narrowed");
    }

    /**
     * {@return lower limit of the mean of a subgroup}
     *
     * @param n its size, at least 1
     */
    public double lower(int n) {
        return centre - width * sigma * meanFactor / Math.sqrt(n);
    }

    /**
     * {@return upper limit of the mean of a subgroup}
     *
     * @param n its size, at least 1
     */
    public double upper(int n) {
        return centre + width * sigma * meanFactor / Math.sqrt(n);
    }

    Chart.Lines meanLines(int n) {
        return new Chart.Lines(lower(n), centre, upper(n), sigma * meanFactor / Math.sqrt(n), n);
    }

    Chart.Lines spreadLines(ChartConstants c) {
        double middle = spread == SubgroupSpread.RANGE ? c.d2() * sigma : c.c4() * sigma;
        double deviation = spread == SubgroupSpread.RANGE ? c.d3() * sigma : c.c5() * sigma;
        return new Chart.Lines(
                Math.max(0, middle - width * deviation), middle, middle + width * deviation, deviation, c.n());
    }
}
