package org.tautlog.signature;

import java.util.Objects;

/**
 * Where the tool stopped: never the last sample, as the drive springs back.
 *
 * @param angleDeg angle at the stop, deg, on the recording's own axis
 * @param torqueNm torque at the stop, N·m, on a line through the last degrees, so that noise averages out
 * @param peakTorqueNm highest single sample of the whole curve, N·m; where samples are few or noisy it may lie below the torque at the stop
 * @param turnDeg angle at the stop less the angle of the snug point, deg
 */
public record FinalPoint(Feature angleDeg, Feature torqueNm, Feature peakTorqueNm, Feature turnDeg) {
    public FinalPoint {
        Objects.requireNonNull(angleDeg, "angleDeg");
        Objects.requireNonNull(torqueNm, "torqueNm");
        Objects.requireNonNull(peakTorqueNm, "peakTorqueNm");
        Objects.requireNonNull(turnDeg, "turnDeg");
    }
}
