package org.tautlog.joint.tightening;

import org.tautlog.joint.Require;

/**
 * How the parts draw together before the joint is as stiff as it will be.
 *
 * <pre>
 * s(F) = S (1 - exp(-F / F_s))      mm
 * </pre>
 *
 * It gives the curve its soft toe; from about three closing loads on, the curve is straight. Source: none; a form chosen for
 * being smooth, always rising and easy to read from a trace.
 *
 * @param closureMm the whole way S that gaps, high spots and edges give, mm; at least 0
 * @param closingLoadN the preload F_s by which 63 % of it is gone, N; above 0
 */
public record Seating(double closureMm, double closingLoadN) {
    /** Checks both. */
    public Seating {
        Require.atLeast("closureMm", closureMm, 0, "mm");
        Require.above("closingLoadN", closingLoadN, 0, "N");
    }

    /**
     * Parts that are seated from the first newton on.
     *
     * @return no closure
     */
    public static Seating none() {
        return new Seating(0, 1);
    }

    /**
     * How far the parts have drawn together.
     *
     * @param preloadN N; at least 0
     * @return mm
     */
    public double closedMm(double preloadN) {
        return closureMm * -Math.expm1(-preloadN / closingLoadN);
    }

    double slopeMmPerN(double preloadN) {
        return closureMm / closingLoadN * Math.exp(-preloadN / closingLoadN);
    }
}
