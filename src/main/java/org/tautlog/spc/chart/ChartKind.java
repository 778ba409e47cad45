package org.tautlog.spc.chart;

/** What a chart plots. */
public enum ChartKind {
    /** Single values. */
    INDIVIDUALS,
    /** Distances between neighbouring single values. */
    MOVING_RANGE,
    /** Means of subgroups. */
    MEAN,
    /** Ranges of subgroups. */
    RANGE,
    /** Standard deviations of subgroups. */
    STANDARD_DEVIATION,
    /** Exponentially weighted moving averages. */
    EWMA,
    /** Cumulative sums. */
    CUSUM,
    /** Hotelling's T squared of several features at once. */
    T_SQUARED,
    /** Counts or fractions. */
    COUNT,
    /** Differences of one stream from the mean of all. */
    DIFFERENCE
}
