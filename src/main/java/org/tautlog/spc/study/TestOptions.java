package org.tautlog.spc.study;

/**
 * How tests are made.
 *
 * @param level chance of a positive result by chance alone, for each test of each group, or of all tests together
 *     where the tests say so; above 0 and below 0.5
 * @param mostStrays the most strays that the generalized ESD test looks for, at least 1
 * @param halfWindow how many neighbours on either side the running window holds, at least 1
 */
public record TestOptions(double level, int mostStrays, int halfWindow) {
    /** Checks the ranges. */
    public TestOptions {
        if (!(level > 0 && level < 0.5))
            throw new IllegalArgumentException("level is " + level + "; it must lie between 0 and 0.5");
        if (mostStrays < 1)
            throw new IllegalArgumentException("most strays is " + mostStrays + "; it must be at least 1");
        if (halfWindow < 1 || halfWindow > 10_000)
            throw new IllegalArgumentException("half window is " + halfWindow + "; it must lie from 1 to 10000");
    }

    /** {@return level 0.01, up to 10 strays, 10 neighbours on either side} */
    public static TestOptions withDefaults() {
        return new TestOptions(0.01, 10, 10);
    }
}
