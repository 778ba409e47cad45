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
        DOWN,
        /** Both: values far off either way follow each other. */
        BOTH;

        /** {@return whether the upper sum lies above the decision value} */
        public boolean up() {
            return this == UP || this == BOTH;
        }

        /** {@return whether the lower sum lies above the decision value} */
        public boolean down() {
            return this == DOWN || this == BOTH;
        }
    }

    /** {@return the place of the first value of the run of the upper sum, from 0} */
    public long roseAt() {
        return index - upperRun + 1;
    }

    /** {@return the place of the first value of the run of the lower sum, from 0} */
    public long fellAt() {
        return index - lowerRun + 1;
    }

    /**
     * {@return where the process lies now by the run of the upper sum, which must be above 0}
     *
     * <pre> target + K + C+ / N+ </pre>
     *
     * Source: Montgomery 9.1.
     *
     * @param limits the limits that the point was held against
     */
    public double risenLevel(CusumLimits limits) {
        return limits.target() + limits.reference() + upperSum / upperRun;
    }

    /**
     * {@return where the process lies now by the run of the lower sum, which must be above 0}
     *
     * <pre> target - K - C- / N- </pre>
     *
     * Source: Montgomery 9.1.
     *
     * @param limits the limits that the point was held against
     */
    public double fallenLevel(CusumLimits limits) {
        return limits.target() - limits.reference() - lowerSum / lowerRun;
    }
}
