package org.tautlog.spc.timeweighted;

import org.tautlog.spc.chart.IndividualsOptions;

/**
 * How a chart of exponentially weighted moving averages is made.
 *
 * @param lambda weight of the newest value, above 0 up to 1
 * @param width distance of the limits from the centre line in standard deviations of the average, above 0
 * @param form whether limits grow with the first points
 * @param neighbours what to do where neighbouring values resemble each other
 */
public record EwmaOptions(double lambda, double width, Form form, IndividualsOptions.Neighbours neighbours) {
    /** How limits start. */
    public enum Form {
        /** Exact for each point: narrow at the start. */
        EXACT,
        /** The same for all points: their final value. */
        STEADY
    }

    /** Checks the ranges. */
    public EwmaOptions {
        if (!(lambda > 0 && lambda <= 1))
            throw new IllegalArgumentException("lambda is " + lambda + "; it must lie above 0 and up to 1");
        if (!(width > 0 && width < 100))
            throw new IllegalArgumentException("width is " + width + "; it must lie between 0 and 100 sigma");
    }

    /** {@return lambda 0.2, width 2.962 (one false alarm in 500 points), exact limits, widened where neighbours resemble} */
    public static EwmaOptions withDefaults() {
        return new EwmaOptions(0.2, 2.962, Form.EXACT, IndividualsOptions.Neighbours.WIDEN);
    }
}
