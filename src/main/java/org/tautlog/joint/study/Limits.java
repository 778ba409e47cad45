package org.tautlog.joint.study;

import org.tautlog.joint.Require;

/**
 * A lower and an upper limit.
 *
 * @param low the lower one
 * @param high the upper one; not below the lower
 */
public record Limits(double low, double high) {
    /** Checks their order. */
    public Limits {
        Require.finite("low", low);
        Require.atLeast("high", high, low, "(low)");
    }

    boolean holds(double value) {
        return value >= low && value <= high;
    }
}
