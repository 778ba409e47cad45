package org.tautlog.joint;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The checks that this room's records make of their own arguments; each message names the field, its value and the limit. */
final class Require {
    private Require() {}

    static double above(String name, double value, double limit, String unit) {
        if (Double.isFinite(value) && value > limit) return value;
        throw refused(name, value, "must be above %s %s", limit, unit);
    }

    static double atLeast(String name, double value, double limit, String unit) {
        if (Double.isFinite(value) && value >= limit) return value;
        throw refused(name, value, "must be at least %s %s", limit, unit);
    }

    static double within(String name, double value, double low, double high, String unit) {
        if (value >= low && value <= high) return value;
        throw new IllegalArgumentException(
                String.format(Locale.ROOT, "%s is %s; it must lie from %s to %s %s", name, value, low, high, unit)
                        .stripTrailing());
    }

    static double finite(String name, double value) {
        if (Double.isFinite(value)) return value;
        throw new IllegalArgumentException(name + " is " + value + "; it must be a finite number");
    }

    static <T> T present(String name, @Nullable T value) {
        if (value != null) return value;
        throw new IllegalArgumentException(name + " is missing");
    }

    static String named(String name, @Nullable String value) {
        if (value != null && !value.isBlank()) return value;
        throw new IllegalArgumentException(name + " is empty; it must name the thing");
    }

    private static IllegalArgumentException refused(String name, double value, String rule, double limit, String unit) {
        return new IllegalArgumentException(String.format(Locale.ROOT, "%s is %s; it " + rule, name, value, limit, unit)
                .stripTrailing());
    }
}
