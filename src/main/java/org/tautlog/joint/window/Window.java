package org.tautlog.joint.window;

import java.util.Objects;

/**
 * The limits that a tightening must keep.
 *
 * @param snugTorqueNm torque at the end of the snug stage, N·m
 * @param turnDeg turn past the snug point, deg
 * @param finalTorqueNm torque where the tool stopped, N·m
 * @param torqueRateNmPerDeg slope of the elastic line, N·m/deg
 * @param prevailingTorqueNm torque of the free turning, N·m
 * @param onset limits of the yield onset
 */
public record Window(
        Band snugTorqueNm,
        Band turnDeg,
        Band finalTorqueNm,
        Band torqueRateNmPerDeg,
        Band prevailingTorqueNm,
        OnsetLimits onset) {
    public Window {
        Objects.requireNonNull(snugTorqueNm, "snugTorqueNm");
        Objects.requireNonNull(turnDeg, "turnDeg");
        Objects.requireNonNull(finalTorqueNm, "finalTorqueNm");
        Objects.requireNonNull(torqueRateNmPerDeg, "torqueRateNmPerDeg");
        Objects.requireNonNull(prevailingTorqueNm, "prevailingTorqueNm");
        Objects.requireNonNull(onset, "onset");
    }
}
