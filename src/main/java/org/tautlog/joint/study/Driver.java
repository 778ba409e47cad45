package org.tautlog.joint.study;

/**
 * What one factor does to one quantity.
 *
 * @param factor the factor
 * @param varianceShare the share of the quantity's variance that would go if the factor were held still (first-order
 *     sensitivity index); 0 to 1
 * @param effectPerDeviation how far one standard deviation of the factor moves the quantity on average, in the quantity's
 *     unit; negative where it lowers it
 */
public record Driver(Factor factor, double varianceShare, double effectPerDeviation) {}
