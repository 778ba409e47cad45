package org.tautlog.spc.chart;

/** How the standard deviation of single values is estimated. */
public enum IndividualsSpread {
    /** Mean moving range over d2(2): ordinary practice; a slow drift hardly widens it. */
    MEAN_MOVING_RANGE,
    /** Median moving range over its normal median, 0.954: one jump hardly widens it. */
    MEDIAN_MOVING_RANGE,
    /** 1.4826 times the median absolute deviation, about the median: strays hardly widen it. */
    MEDIAN_DEVIATION,
    /** Standard deviation of all values: for series known to be stable. */
    STANDARD_DEVIATION
}
