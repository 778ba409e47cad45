package org.tautlog.spc.gauge;

/**
 * How a gauge study by analysis of variance is made.
 *
 * @param poolAbove p value of the interaction above which it is taken as repeatability, from 0 to 1
 */
public record GaugeOptions(double poolAbove) {
    /** Checks the range. */
    public GaugeOptions {
        if (!(poolAbove >= 0 && poolAbove <= 1))
            throw new IllegalArgumentException("poolAbove is " + poolAbove + "; it must lie from 0 to 1");
    }

    /** {@return pooled above 0.05} */
    public static GaugeOptions withDefaults() {
        return new GaugeOptions(0.05);
    }
}
