package org.tautlog.spc.capability;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * The three percentiles that stand for mean and six standard deviations where a distribution is not normal.
 *
 * <pre>
 * P = (U - L) / (X99.865 - X0.135),  PU = (U - X50) / (X99.865 - X50),  PL = (X50 - L) / (X50 - X0.135)
 * </pre>
 *
 * Source: ISO 22514-2, general geometric method.
 *
 * @param low the 0.135 % point
 * @param middle the median, above {@code low}
 * @param high the 99.865 % point, above {@code middle}
 */
public record Percentiles(double low, double middle, double high) {
    static final double TAIL = 0.00135;

    /** Checks the arguments. */
    public Percentiles {
        if (!(low < middle && middle < high && Double.isFinite(low) && Double.isFinite(high)))
            throw new IllegalArgumentException(
                    "percentiles are " + low + ", " + middle + ", " + high + "; they must be finite and rise");
    }

    /**
     * Reads the three from an inverse distribution function.
     *
     * @param inverse fraction below in, value out
     * @return the percentiles
     */
    public static Percentiles of(DoubleUnaryOperator inverse) {
        return new Percentiles(
                inverse.applyAsDouble(TAIL), inverse.applyAsDouble(0.5), inverse.applyAsDouble(1 - TAIL));
    }

    /**
     * {@return the index of spread alone, empty with one limit}
     *
     * @param spec the limits
     */
    public OptionalDouble spread(SpecLimits spec) {
        var lower = spec.lowerLimit();
        var upper = spec.upperLimit();
        return lower.isPresent() && upper.isPresent()
                ? OptionalDouble.of((upper.getAsDouble() - lower.getAsDouble()) / (high - low))
                : OptionalDouble.empty();
    }

    /**
     * {@return the index of the upper limit, empty without one}
     *
     * @param spec the limits
     */
    public OptionalDouble upperSide(SpecLimits spec) {
        var upper = spec.upperLimit();
        return upper.isPresent()
                ? OptionalDouble.of((upper.getAsDouble() - middle) / (high - middle))
                : OptionalDouble.empty();
    }

    /**
     * {@return the index of the lower limit, empty without one}
     *
     * @param spec the limits
     */
    public OptionalDouble lowerSide(SpecLimits spec) {
        var lower = spec.lowerLimit();
        return lower.isPresent()
                ? OptionalDouble.of((middle - lower.getAsDouble()) / (middle - low))
                : OptionalDouble.empty();
    }

    /**
     * {@return the index of the nearer limit, or of the only one}
     *
     * @param spec the limits
     */
    public double nearest(SpecLimits spec) {
        return Math.min(
                upperSide(spec).orElse(Double.POSITIVE_INFINITY),
                lowerSide(spec).orElse(Double.POSITIVE_INFINITY));
    }
}
