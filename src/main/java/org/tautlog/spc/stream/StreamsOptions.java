package org.tautlog.spc.stream;

import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;

/**
 * How parallel streams are charted.
 *
 * @param falseAlarm chance of a false signal at one time, all streams together, for each of: group limits, own limits, run of
 *     one stream, sums of one stream; above 0 and below 0.5
 * @param leastValues fewest values by which a stream is charted, at least 2; a stream with fewer is named and left out
 * @param common how the mean of the streams is charted
 * @param phaseOne how differences beyond the limits are left out of them
 */
public record StreamsOptions(double falseAlarm, int leastValues, IndividualsOptions common, PhaseOneOptions phaseOne) {
    /** Checks the ranges. */
    public StreamsOptions {
        if (!(falseAlarm > 0 && falseAlarm < 0.5))
            throw new IllegalArgumentException("falseAlarm is " + falseAlarm + "; it must lie between 0 and 0.5");
        if (leastValues < 2)
            throw new IllegalArgumentException("leastValues is " + leastValues + "; it must be at least 2");
    }

    /** {@return one false signal in 1000 times for each kind, 5 values a stream, usual chart of the mean, points left out by the usual rules} */
    public static StreamsOptions withDefaults() {
        return new StreamsOptions(0.001, 5, IndividualsOptions.withDefaults(), PhaseOneOptions.withDefaults());
    }
}
