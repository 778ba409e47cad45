package org.tautlog.accuracy;

import org.tautlog.trace.Curve;

/**
 * A curve whose features are known, on the recording's own axis.
 *
 * @param curve the samples
 * @param snugDeg snug point, deg
 * @param rateNmPerDeg torque rate, N·m/deg
 * @param originDeg elastic origin, deg
 * @param onsetDeg where the gradient is half of the torque rate, deg, reached or not
 * @param onsetNm torque there, N·m
 * @param stopDeg where the tool stopped, deg
 * @param loadKN clamp load there, kN; NaN for a curve without physics
 */
record Known(
        Curve curve,
        double snugDeg,
        double rateNmPerDeg,
        double originDeg,
        double onsetDeg,
        double onsetNm,
        double stopDeg,
        double loadKN) {
    private static final Curve NO_SAMPLES = Curve.of(new double[1], new double[1]);

    /** The truth alone, so that thousands can be kept. */
    Known withoutSamples() {
        return new Known(NO_SAMPLES, snugDeg, rateNmPerDeg, originDeg, onsetDeg, onsetNm, stopDeg, loadKN);
    }
}
