package org.tautlog.review.tuning;

/**
 * How one threshold reads the onsets of the traces: error is the onset read less the one measured.
 *
 * @param threshold the threshold, a ratio or deg
 * @param biasDeg median error, deg; a trace on which it reads no onset counts as read too late by more than any other, so that
 *     the bias is infinite where more than half are; NaN where there are no traces
 * @param spreadDeg 1.4826 median absolute deviation of the errors from their median, deg; infinite or NaN likewise
 * @param notRead traces with a measured onset on which it reads none
 * @param claimed traces without a measured onset on which it reads one
 */
public record Standing(double threshold, double biasDeg, double spreadDeg, int notRead, int claimed) {}
