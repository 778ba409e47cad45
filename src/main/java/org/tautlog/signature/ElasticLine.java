package org.tautlog.signature;

import java.util.Objects;

/**
 * The straight line of the elastic zone.
 *
 * @param torqueRateNmPerDeg its slope, N·m/deg
 * @param originDeg where it meets the prevailing torque, deg, on the recording's own axis: zero clamp load
 * @param residualNm robust spread of the torque about the line, N·m
 */
public record ElasticLine(Feature torqueRateNmPerDeg, Feature originDeg, Feature residualNm) {
    public ElasticLine {
        Objects.requireNonNull(torqueRateNmPerDeg, "torqueRateNmPerDeg");
        Objects.requireNonNull(originDeg, "originDeg");
        Objects.requireNonNull(residualNm, "residualNm");
    }
}
