package org.tautlog.signature;

import java.util.OptionalDouble;

/**
 * One number read from a curve, with its standard uncertainty, or the reason why it is missing.
 *
 * @param number the value; 0 where it is missing
 * @param standardUncertainty one standard deviation of the value, in its unit, 0 where it is not stated
 * @param whyMissing why there is no value, in words; empty where there is one
 */
public record Feature(double number, double standardUncertainty, String whyMissing) {
    public Feature {
        if (!Double.isFinite(number) || !(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException("a feature is " + number + " with uncertainty " + standardUncertainty
                    + "; both must be finite, the uncertainty not below 0");
        }
        if (!whyMissing.isEmpty() && number != 0) {
            throw new IllegalArgumentException("a feature is " + number + " and missing because " + whyMissing);
        }
    }

    /**
     * A value that was found.
     *
     * @param value the value, finite
     * @param standardUncertainty one standard deviation, at least 0
     * @return the feature
     */
    public static Feature of(double value, double standardUncertainty) {
        return new Feature(value, standardUncertainty, "");
    }

    /**
     * A value that could not be found.
     *
     * @param why the reason in words, not blank
     * @return the feature
     */
    public static Feature missing(String why) {
        if (why.isBlank()) {
            throw new IllegalArgumentException("a missing feature must say why");
        }
        return new Feature(0, 0, why);
    }

    /** {@return whether there is a value} */
    public boolean isFound() {
        return whyMissing.isEmpty();
    }

    /** {@return the value, empty where it is missing} */
    public OptionalDouble value() {
        return isFound() ? OptionalDouble.of(number) : OptionalDouble.empty();
    }
}
