package org.tautlog.spc.multivariate;

import org.tautlog.spc.Covariance;

/**
 * Frozen limits of Hotelling's T squared: all that phase 2 needs.
 *
 * @param covariance centre and covariance of single items
 * @param subgroupSize items in each subgroup; 1 for single items
 * @param points how many points the limits rest on
 * @param falseAlarm chance that a point in control lies above a limit
 * @param phaseOneLimit upper limit for the points that the limits rest on
 * @param phaseTwoLimit upper limit for new points
 */
public record HotellingLimits(
        Covariance covariance,
        int subgroupSize,
        int points,
        double falseAlarm,
        double phaseOneLimit,
        double phaseTwoLimit) {
    /** Which points the limits are held against. */
    public enum Phase {
        /** The points that the limits rest on. */
        ONE,
        /** New points. */
        TWO
    }

    /**
     * {@return the upper limit}
     *
     * @param phase which points it is held against
     */
    public double upper(Phase phase) {
        return phase == Phase.ONE ? phaseOneLimit : phaseTwoLimit;
    }
}
