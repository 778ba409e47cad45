package org.tautlog.spc.capability;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The limits that single values must keep: both, or only one.
 *
 * @param lower lower specification limit, null for none
 * @param upper upper specification limit, null for none
 */
public record SpecLimits(@Nullable Double lower, @Nullable Double upper) {
    /** Checks the arguments. */
    public SpecLimits {
        if (lower == null && upper == null) throw new IllegalArgumentException("neither limit is given; one is needed");
        if (lower != null && !Double.isFinite(lower))
            throw new IllegalArgumentException("lower is " + lower + "; it must be finite");
        if (upper != null && !Double.isFinite(upper))
            throw new IllegalArgumentException("upper is " + upper + "; it must be finite");
        if (lower != null && upper != null && !(lower < upper))
            throw new IllegalArgumentException("lower is " + lower + "; it must lie below upper, " + upper);
    }

    /**
     * {@return a two-sided specification}
     *
     * @param lower lower limit
     * @param upper upper limit, above the lower one
     */
    public static SpecLimits between(double lower, double upper) {
        return new SpecLimits(lower, upper);
    }

    /**
     * {@return a specification with a lower limit only}
     *
     * @param lower lower limit
     */
    public static SpecLimits atLeast(double lower) {
        return new SpecLimits(lower, null);
    }

    /**
     * {@return a specification with an upper limit only}
     *
     * @param upper upper limit
     */
    public static SpecLimits atMost(double upper) {
        return new SpecLimits(null, upper);
    }

    /** {@return the lower limit, empty for none} */
    public OptionalDouble lowerLimit() {
        return lower == null ? OptionalDouble.empty() : OptionalDouble.of(lower);
    }

    /** {@return the upper limit, empty for none} */
    public OptionalDouble upperLimit() {
        return upper == null ? OptionalDouble.empty() : OptionalDouble.of(upper);
    }

    /** {@return whether both limits are given} */
    public boolean twoSided() {
        return lower != null && upper != null;
    }

    /**
     * {@return whether a value lies beyond a limit, on a limit not counting}
     *
     * @param value the value
     */
    public boolean outside(double value) {
        return (lower != null && value < lower) || (upper != null && value > upper);
    }
}
