package org.tautlog.joint.study;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tautlog.joint.Require;

/**
 * How far a factor strays from its nominal value.
 *
 * @param shape the shape of its distribution, centred on nominal
 * @param standardDeviation its standard deviation in the factor's unit; at least 0, where 0 is no scatter
 */
public record Spread(Shape shape, double standardDeviation) {
    /** The shape of a factor's distribution. */
    public enum Shape {
        /** Gaussian: many small causes. */
        NORMAL,
        /** Every value between two limits equally likely: a tolerance about which nothing more is known. */
        EVEN
    }

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final double HALF_WIDTH_PER_DEVIATION = Math.sqrt(3);

    /** Checks both. */
    public Spread {
        Require.present("shape", shape);
        Require.atLeast("standardDeviation", standardDeviation, 0, "");
    }

    /**
     * A Gaussian spread.
     *
     * @param standardDeviation in the factor's unit; at least 0
     * @return the spread
     */
    public static Spread normal(double standardDeviation) {
        return new Spread(Shape.NORMAL, standardDeviation);
    }

    /**
     * An even spread between nominal less and nominal plus half the width.
     *
     * @param halfWidth in the factor's unit; at least 0
     * @return the spread
     */
    public static Spread even(double halfWidth) {
        Require.atLeast("halfWidth", halfWidth, 0, "");
        return new Spread(Shape.EVEN, halfWidth / HALF_WIDTH_PER_DEVIATION);
    }

    /** The deviation in standard deviations that belongs to a probability between 0 and 1, both excluded. */
    double standardised(double probability) {
        return shape == Shape.NORMAL
                ? STANDARD.inverseCumulativeProbability(probability)
                : HALF_WIDTH_PER_DEVIATION * (2 * probability - 1);
    }
}
