package org.tautlog.spc;

/**
 * A confidence interval.
 *
 * @param lower lower bound, in the units of what it bounds
 * @param upper upper bound, not below the lower one
 * @param confidence confidence of the pair, above 0 and below 1
 */
public record Interval(double lower, double upper, double confidence) {
    /** Checks the arguments. */
    public Interval {
        if (!(lower <= upper))
            throw new IllegalArgumentException("lower is " + lower + "; it must not lie above upper, " + upper);
        if (!(confidence > 0 && confidence < 1))
            throw new IllegalArgumentException("confidence is " + confidence + "; it must lie between 0 and 1");
    }

    /**
     * {@return whether the value lies within the bounds, bounds included}
     *
     * @param value the value asked about
     */
    public boolean contains(double value) {
        return value >= lower && value <= upper;
    }
}
