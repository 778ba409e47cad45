package org.tautlog.spc.change;

import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Interval;

/**
 * The likeliest single change in a series, and whether there is one at all.
 *
 * @param kind what changed
 * @param index first place after the change, from 0
 * @param earliest earliest first place after the change, at the stated confidence
 * @param latest latest first place after the change, at the stated confidence
 * @param before mean or standard deviation before
 * @param after mean or standard deviation after
 * @param size after less before (mean) or after over before (standard deviation), with its bounds
 * @param pValue chance of so strong a change in a steady series
 * @param significance the p value at or below which a change is reported
 * @param n how many values were searched
 * @param neighbours autocorrelation of what is left beside the change; p and bounds allow for it
 */
public record ChangePoint(
        Kind kind,
        int index,
        int earliest,
        int latest,
        double before,
        double after,
        Size size,
        double pValue,
        double significance,
        int n,
        Autocorrelation neighbours) {
    /** What changed. */
    public enum Kind {
        /** The mean: the size is a difference. */
        MEAN,
        /** The standard deviation: the size is a ratio. */
        SPREAD
    }

    /**
     * How large the change is.
     *
     * @param value difference of means or ratio of standard deviations
     * @param bounds its confidence bounds, given the time of the change
     */
    public record Size(double value, Interval bounds) {}

    /** {@return whether the change is one, at the options' significance} */
    public boolean significant() {
        return pValue <= significance;
    }
}
