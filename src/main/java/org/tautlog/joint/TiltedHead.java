package org.tautlog.joint;

/**
 * Bending at the under-head fillet when the head's face is not square to the bolt's axis and the preload pulls it flat.
 *
 * <pre>
 * M = alpha E I k coth(k l)      k = sqrt(F / (E I))      N mm
 * sigma_b = M (d/2) / I                                    MPa
 *
 * alpha tilt, rad; l free length, mm; d, I = pi d^4/64 of the segment under the head; F preload, N
 * k l small:  M = alpha E I / l              the bolt bends evenly over its length
 * k l big:    sigma_b = 2 alpha sqrt(sigma E)  a taut bolt bends just under its head
 * </pre>
 *
 * The head may slide sideways while it settles. The value is the added stress of a smooth shank: the fillet's own notch
 * factor comes on top for fatigue and not for yield.
 *
 * <p>Source: beam in tension, elementary theory; even bending as in common practice; the taut case as for wires bent at a
 * clamp, from memory. What the head settles to is the worst case: a soft layer takes part of the tilt.
 */
public final class TiltedHead {
    private TiltedHead() {}

    /**
     * The bending stress that a tilt adds at the fillet.
     *
     * @param bolt the bolt
     * @param tiltDeg how far the face is out of square, deg; from 0 to 10
     * @param preloadN the preload, N; at least 0
     * @return MPa at the outermost fibre
     */
    public static double bendingMPa(Bolt bolt, double tiltDeg, double preloadN) {
        Require.within("tiltDeg", tiltDeg, 0, 10, "deg");
        Require.atLeast("preloadN", preloadN, 0, "N");
        var diameterMm = bolt.segments().get(0).diameterMm();
        var modulusMPa = bolt.material().youngsModulusMPa();
        var bendingNmm2 = modulusMPa * Math.PI * Math.pow(diameterMm, 4) / 64;
        var slenderness = bolt.freeLengthMm() * Math.sqrt(preloadN / bendingNmm2);
        var evenMPa = Math.toRadians(tiltDeg) * modulusMPa * diameterMm / (2 * bolt.freeLengthMm());
        return evenMPa * (slenderness > 0 ? slenderness / Math.tanh(slenderness) : 1);
    }

    /**
     * The same as a share of the bolt's yield strength.
     *
     * @param bolt the bolt
     * @param tiltDeg how far the face is out of square, deg; from 0 to 10
     * @param preloadN the preload, N; at least 0
     * @return a share (0.1 is 10 %)
     */
    public static double shareOfYield(Bolt bolt, double tiltDeg, double preloadN) {
        return bendingMPa(bolt, tiltDeg, preloadN) / bolt.material().yieldStrengthMPa();
    }
}
