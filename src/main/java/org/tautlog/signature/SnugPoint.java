package org.tautlog.signature;

import java.util.Objects;

/**
 * The place in the curve where the snug torque is reached and held.
 *
 * @param angleDeg angle of the upward crossing of the snug torque, deg, on the recording's own axis
 * @param torqueNm highest torque of the snug stage, N·m
 */
public record SnugPoint(Feature angleDeg, Feature torqueNm) {
    public SnugPoint {
        Objects.requireNonNull(angleDeg, "angleDeg");
        Objects.requireNonNull(torqueNm, "torqueNm");
    }
}
