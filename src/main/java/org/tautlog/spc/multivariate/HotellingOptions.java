package org.tautlog.spc.multivariate;

import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;

/**
 * How a chart of Hotelling's T squared is made.
 *
 * @param falseAlarm chance that a point in control lies above the limit, above 0 and below 1
 * @param neighbours what to do where neighbouring items resemble each other
 * @param phaseOne how points above the limit are left out of it
 */
public record HotellingOptions(double falseAlarm, IndividualsOptions.Neighbours neighbours, PhaseOneOptions phaseOne) {
    /** Checks the range. */
    public HotellingOptions {
        if (!(falseAlarm > 0 && falseAlarm < 1))
            throw new IllegalArgumentException("falseAlarm is " + falseAlarm + "; it must lie between 0 and 1");
    }

    /** {@return 0.0027 as three sigma, points left out by the usual rules} */
    public static HotellingOptions withDefaults() {
        return new HotellingOptions(0.0027, IndividualsOptions.Neighbours.WIDEN, PhaseOneOptions.withDefaults());
    }

    /**
     * {@return these options with another chance of a false alarm}
     *
     * @param other the chance
     */
    public HotellingOptions withFalseAlarm(double other) {
        return new HotellingOptions(other, neighbours, phaseOne);
    }

    /**
     * {@return these options with another phase 1}
     *
     * @param other how points are left out
     */
    public HotellingOptions withPhaseOne(PhaseOneOptions other) {
        return new HotellingOptions(falseAlarm, neighbours, other);
    }
}
