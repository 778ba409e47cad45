package org.tautlog.signature;

/**
 * The longest run of turning samples that stand at the highest torque, as a sensor at its limit leaves it: all at one value,
 * or all within a digit above and below, where the last digit flickers.
 *
 * <p>Coarse recordings stand on every level for a while. A run counts only where it is several times as long as any run
 * within as narrow a band on the loaded levels below.
 *
 * <p>Source: none; a sensor at its limit shows the same torque whatever the joint does.
 */
final class TopRun {
    /** Torque over the highest from which on the levels below are compared. */
    private static final double LOADED = 0.5;

    /** How many times as long as on the levels below. */
    private static final int TIMES = 3;

    /** Recorded torques are decimals, whose differences miss by rounding. */
    private static final double ROUNDING = 1e-9;

    private final Turning turning;
    private final double highestNm;

    private TopRun(Turning turning, double highestNm) {
        this.turning = turning;
        this.highestNm = highestNm;
    }

    /** How many samples; 0 where the top stands out in nothing. */
    static int samples(Turning turning) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < turning.size(); i++) {
            highest = Math.max(highest, turning.torqueNm(i));
        }
        var top = new TopRun(turning, highest);
        return Math.max(top.samplesWithin(0), top.samplesWithin(2 * top.digitNm()));
    }

    private int samplesWithin(double bandNm) {
        double band = bandNm + ROUNDING * highestNm;
        int longest = 0;
        int longestBelow = 0;
        for (int i = 0; i < turning.size(); i++) {
            if (turning.torqueNm(i) >= highestNm - band) {
                int run = atTop(i, band);
                longest = Math.max(longest, run);
                i += run - 1;
            } else if (turning.torqueNm(i) >= LOADED * highestNm) {
                longestBelow = Math.max(longestBelow, below(i, band));
            }
        }
        return longestBelow > 0 && longest >= TIMES * longestBelow ? longest : 0;
    }

    private int atTop(int from, double band) {
        int to = from;
        while (to < turning.size() && turning.torqueNm(to) >= highestNm - band) {
            to++;
        }
        return to - from;
    }

    private int below(int from, double band) {
        double least = turning.torqueNm(from);
        double most = least;
        int to = from;
        while (most - least <= band && most < highestNm - band && ++to < turning.size()) {
            least = Math.min(least, turning.torqueNm(to));
            most = Math.max(most, turning.torqueNm(to));
        }
        return to - from;
    }

    /** Least difference of samples that follow each other under load: the last digit of the recording, or its noise. */
    private double digitNm() {
        double digit = Double.POSITIVE_INFINITY;
        for (int i = 1; i < turning.size(); i++) {
            double step = Math.abs(turning.torqueNm(i) - turning.torqueNm(i - 1));
            if (step > ROUNDING * highestNm && turning.torqueNm(i) >= LOADED * highestNm) {
                digit = Math.min(digit, step);
            }
        }
        return Double.isInfinite(digit) ? 0 : digit;
    }
}
