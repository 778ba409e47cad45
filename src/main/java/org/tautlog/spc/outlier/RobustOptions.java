package org.tautlog.spc.outlier;

/**
 * How robust distances are made.
 *
 * @param share share of the items that the covariance rests on, from 0.5 to 1: 0.5 stands most strays, 0.75 is more exact
 * @param falseAlarm chance of flagging a good item, above 0 and below 0.5
 * @param starts random starts of the search, at least 1
 * @param seed seed of the starts
 */
public record RobustOptions(double share, double falseAlarm, int starts, long seed) {
    /** Checks the ranges. */
    public RobustOptions {
        if (!(share >= 0.5 && share <= 1))
            throw new IllegalArgumentException("share is " + share + "; it must lie from 0.5 to 1");
        if (!(falseAlarm > 0 && falseAlarm < 0.5))
            throw new IllegalArgumentException("falseAlarm is " + falseAlarm + "; it must lie between 0 and 0.5");
        if (starts < 1) throw new IllegalArgumentException("starts is " + starts + "; it must be at least 1");
    }

    /** {@return three quarters of the items, 1 in 10,000 flagged by chance, 200 starts, a fixed seed} */
    public static RobustOptions withDefaults() {
        return new RobustOptions(0.75, 1e-4, 200, 20_260_101L);
    }
}
