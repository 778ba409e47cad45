package org.tautlog.signature;

import java.util.Objects;

/**
 * Where the local gradient leaves the elastic line, and how far it fell.
 *
 * @param angleDeg angle of the onset, deg, on the recording's own axis; missing where the gradient never fell so far
 * @param torqueNm torque at the onset, N·m
 * @param minGradientRatio least local gradient after the elastic zone over the torque rate, a ratio
 * @param finalGradientRatio local gradient at the stop over the torque rate, a ratio
 * @param pastOnsetDeg angle at the stop less the angle of the onset, deg
 * @param endState the state at the end in three grades
 */
public record YieldOnset(
        Feature angleDeg,
        Feature torqueNm,
        Feature minGradientRatio,
        Feature finalGradientRatio,
        Feature pastOnsetDeg,
        EndState endState) {
    public YieldOnset {
        Objects.requireNonNull(angleDeg, "angleDeg");
        Objects.requireNonNull(torqueNm, "torqueNm");
        Objects.requireNonNull(minGradientRatio, "minGradientRatio");
        Objects.requireNonNull(finalGradientRatio, "finalGradientRatio");
        Objects.requireNonNull(pastOnsetDeg, "pastOnsetDeg");
        Objects.requireNonNull(endState, "endState");
    }
}
