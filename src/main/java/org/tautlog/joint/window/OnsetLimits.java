package org.tautlog.joint.window;

import java.util.Objects;

/**
 * Where the yield onset may lie and how far into yield the bolt may be taken.
 *
 * @param pastSnugDeg earliest and latest yield onset past the snug point, deg
 * @param pastOriginDeg earliest and latest yield onset past the elastic origin, deg
 * @param leastFinalGradientRatio least gradient ratio (local gradient over torque rate) at the end of the turn, 0 to 1;
 *     0 allows any
 */
public record OnsetLimits(Band pastSnugDeg, Band pastOriginDeg, double leastFinalGradientRatio) {
    public OnsetLimits {
        Objects.requireNonNull(pastSnugDeg, "pastSnugDeg");
        Objects.requireNonNull(pastOriginDeg, "pastOriginDeg");
        Check.within("leastFinalGradientRatio", leastFinalGradientRatio, 0.0, 1.0, "a ratio");
    }
}
