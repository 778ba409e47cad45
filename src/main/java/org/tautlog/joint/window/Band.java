package org.tautlog.joint.window;

import java.util.Locale;

/**
 * A closed range between two limits; a side without a limit is infinite.
 *
 * @param low least value that is inside, or negative infinity
 * @param high greatest value that is inside, or positive infinity
 */
public record Band(double low, double high) {
    private static final int MORE_DECIMALS = 3;

    public Band {
        if (Double.isNaN(low) || Double.isNaN(high)) {
            throw new IllegalArgumentException("limits are " + low + " and " + high + "; both must be numbers");
        }
        if (low > high) {
            throw new IllegalArgumentException(
                    "limits are upside down: low is " + low + ", high is " + high + "; low must not exceed high");
        }
    }

    /** {@return a band without limits: everything is inside} */
    public static Band open() {
        return new Band(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /**
     * Says whether a value keeps both limits.
     *
     * @param value any number; NaN is outside
     * @return whether low &lt;= value &lt;= high
     */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /**
     * Says with how many decimals a value outside does not read as the limit that it misses.
     *
     * @param value any number
     * @param usual decimals that are enough for any other value, at least 0
     * @return the usual decimals, or up to {@value #MORE_DECIMALS} more
     */
    public int decimals(double value, int usual) {
        double limit = value < low ? low : high;
        int decimals = usual;
        while (!contains(value) && decimals < usual + MORE_DECIMALS && alike(value, limit, decimals)) {
            decimals++;
        }
        return decimals;
    }

    private static boolean alike(double value, double limit, int decimals) {
        var format = "%." + decimals + 'f';
        return String.format(Locale.ROOT, format, value).equals(String.format(Locale.ROOT, format, limit));
    }

    /** {@return whether there is a lower limit} */
    public boolean hasLow() {
        return low != Double.NEGATIVE_INFINITY;
    }

    /** {@return whether there is an upper limit} */
    public boolean hasHigh() {
        return high != Double.POSITIVE_INFINITY;
    }
}
