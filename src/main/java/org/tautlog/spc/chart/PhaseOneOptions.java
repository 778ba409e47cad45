package org.tautlog.spc.chart;

/**
 * How phase 1 treats points beyond its own limits.
 *
 * @param mostRounds most rounds of leaving points out and computing limits again; 0 keeps every point
 * @param largestShare largest share of the points that may be left out, from 0 up to but not including 1; a process that
 *     needs more is not in control, and limits from the rest would hide it
 */
public record PhaseOneOptions(int mostRounds, double largestShare) {
    /** Checks the arguments. */
    public PhaseOneOptions {
        if (mostRounds < 0)
            throw new IllegalArgumentException("mostRounds is " + mostRounds + "; it must be at least 0");
        if (!(largestShare >= 0 && largestShare < 1))
            throw new IllegalArgumentException("largestShare is " + largestShare + "; it must lie from 0 to below 1");
    }

    /** {@return up to 10 rounds, at most a quarter of the points} */
    public static PhaseOneOptions withDefaults() {
        return new PhaseOneOptions(10, 0.25);
    }

    /** {@return every point kept} */
    public static PhaseOneOptions keepAll() {
        return new PhaseOneOptions(0, 0);
    }
}
