package org.tautlog.spc.chart;

/** What tells the spread within subgroups, and which spread chart is drawn below the means. */
public enum SubgroupSpread {
    /** Mean range over d2; ranges are drawn. Usual for subgroups of up to 10. */
    RANGE,
    /** Mean standard deviation over c4; standard deviations are drawn. */
    STANDARD_DEVIATION,
    /** Root of the pooled variance over its own c4; standard deviations are drawn. */
    POOLED
}
