package org.tautlog.joint;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The checks that the records of this room and its sub-rooms make of their own arguments: each refusal names field, value and limit. */
public final class Require {
    private Require() {}

    /**
     * A finite number above a limit.
     *
     * @param name the field
     * @param value its value
     * @param limit the limit
     * @param unit the limit's unit, with the limiting field in brackets where that helps; empty for a ratio
     * @throws IllegalArgumentException when it is not
     */
    public static void above(String name, double value, double limit, String unit) {
        if (!(Double.isFinite(value) && value > limit)) throw refused(name, value, "must be above", limit, unit);
    }

    /**
     * A finite number, a limit or above it.
     *
     * @param name the field
     * @param value its value
     * @param limit the limit
     * @param unit the limit's unit; empty for a ratio
     * @throws IllegalArgumentException when it is not
     */
    public static void atLeast(String name, double value, double limit, String unit) {
        if (!(Double.isFinite(value) && value >= limit)) throw refused(name, value, "must be at least", limit, unit);
    }

    /**
     * A number between two limits, both included.
     *
     * @param name the field
     * @param value its value
     * @param low the lower limit
     * @param high the upper limit
     * @param unit the limits' unit; empty for a ratio
     * @throws IllegalArgumentException when it is not
     */
    public static void within(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high))
            throw refused(name, value, String.format(Locale.ROOT, "must lie from %s to", low), high, unit);
    }

    /**
     * A finite number.
     *
     * @param name the field
     * @param value its value
     * @throws IllegalArgumentException when it is not
     */
    public static void finite(String name, double value) {
        if (!Double.isFinite(value))
            throw new IllegalArgumentException(name + " is " + value + "; it must be a finite number");
    }

    /**
     * A thing that is there.
     *
     * @param name the field
     * @param value its value
     * @param <T> its type
     * @return the value
     * @throws IllegalArgumentException when it is missing
     */
    public static <T> T present(String name, @Nullable T value) {
        if (value == null) throw new IllegalArgumentException(name + " is missing");
        return value;
    }

    static void named(String name, @Nullable String value) {
        if (value == null || value.isBlank())
            throw new IllegalArgumentException(name + " is empty; it must name the thing");
    }

    private static IllegalArgumentException refused(String name, double value, String rule, double limit, String unit) {
        return new IllegalArgumentException(
                String.format(Locale.ROOT, "%s is %s; it %s %s %s", name, value, rule, limit, unit)
                        .stripTrailing());
    }
}
