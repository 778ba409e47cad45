package org.tautlog.signature;

import org.tautlog.trace.Curve;

/** How far the angle moves on from sample to sample: what a recording cannot show lies between two of them. */
final class Steps {
    /** So many steps back are looked at: a tool slows down over more than these. */
    private static final int LOOKED_AT = 3;

    private Steps() {}

    /** The longest of the last steps forward up to a sample, deg; 0 where there is none. */
    static double longestBefore(Curve curve, int sample) {
        double longest = 0;
        int seen = 0;
        for (int i = sample; i > 0 && seen < LOOKED_AT; i--) {
            double step = curve.angleDeg(i) - curve.angleDeg(i - 1);
            if (step > 0 && !Stop.wild(curve, i) && !Stop.wild(curve, i - 1)) {
                longest = Math.max(longest, step);
                seen++;
            }
        }
        return longest;
    }
}
