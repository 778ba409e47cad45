package org.tautlog.spc.capability;

import org.tautlog.spc.Interval;

/**
 * One index with its bounds.
 *
 * @param value the index; 1 means that the spread of six standard deviations, or the nearer half of it, just fits
 * @param bounds its confidence bounds
 * @param n how many independent values its bounds rest on: fewer than there are where neighbours resemble each other
 * @param method how index and bounds were made
 */
public record CapabilityIndex(double value, Interval bounds, int n, Method method) {
    /** How an index and its bounds were made. */
    public enum Method {
        /** Standard deviations of a normal distribution; bounds by chi squared. */
        NORMAL_CHI_SQUARED,
        /** Standard deviations of a normal distribution; bounds by Bissell's approximation. */
        NORMAL_BISSELL,
        /** Percentiles 0.135, 50 and 99.865 of a fitted distribution; bounds by a seeded bootstrap. */
        PERCENTILE_FITTED,
        /** Percentiles 0.135, 50 and 99.865 of the values themselves; bounds by a seeded bootstrap. */
        PERCENTILE_EMPIRICAL
    }
}
