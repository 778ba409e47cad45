package org.tautlog.spc.compare;

import org.tautlog.spc.Interval;

/**
 * Two groups compared among several.
 *
 * @param one place of the first group, from 0
 * @param other place of the second group, from 0
 * @param difference mean of the second less mean of the first
 * @param bounds bounds of the difference by Welch's t, for this pair alone
 * @param pValue p value of this pair alone
 * @param adjusted p value that allows for all pairs
 * @param adjustment how it does
 */
public record PairComparison(
        int one,
        int other,
        double difference,
        Interval bounds,
        double pValue,
        double adjusted,
        Adjustment adjustment) {}
