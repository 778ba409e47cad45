package org.tautlog.spc.timeweighted;

/**
 * One step of a tabular CUSUM.
 *
 * @param index place in the series, from 0
 * @param value the value, in the units of the data
 * @param upperSum C+, at least 0
 * @param lowerSum C-, at least 0
 * @param upperRun how many steps C+ has been above 0: where it signals, the shift began that many steps ago
 * @param lowerRun how many steps C- has been above 0
 * @param signal which sum lies above the decision value
 */
public record CusumPoint(
        long index, double value, double upperSum, double lowerSum, long upperRun, long lowerRun, Signal signal) {
    /** Which sum lies above the decision value. */
    public enum Signal {
        /** Neither. */
        NONE,
        /** The upper one: the process has risen. */
        UP,
        /** The lower one: the process has fallen. */
        DOWN
    }

    /** {@return the place of the first value of the run that signals, from 0; this point's own place where none does} */
    public long began() {
        return switch (signal) {
            case NONE -> index;
            case UP -> index - upperRun + 1;
            case DOWN -> index - lowerRun + 1;
        };
    }

    /**
     * {@return where the process lies now, by the run that signals; the target where none does}
     *
     * <pre> target + K + C+ / N+  or  target - K - C- / N- </pre>
     *
     * Source: Montgomery 9.1.
     *
     * @param limits the limits that the point was held against
     */
    public double level(CusumLimits limits) {
        return switch (signal) {
            case NONE -> limits.target();
            case UP -> limits.target() + limits.reference() + upperSum / upperRun;
            case DOWN -> limits.target() - limits.reference() - lowerSum / lowerRun;
        };
    }
}
