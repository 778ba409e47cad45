package org.tautlog.joint.window;

/** Refusals that name the field, its value, its limit and its unit. */
final class Check {
    private Check() {}

    static void above(String name, double value, double limit, String unit) {
        if (!(value > limit) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; it must be above " + limit + " and finite, " + unit);
        }
    }

    static void within(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; it must lie from " + low + " to " + high + ", " + unit);
        }
    }
}
