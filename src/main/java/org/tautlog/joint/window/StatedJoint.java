package org.tautlog.joint.window;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.study.Factor;
import org.tautlog.joint.study.Spread;

/**
 * What a specification states about the joint itself, so that clamp load can be estimated and the window be justified.
 *
 * @param joint bolt, layers and friction, each at its mean
 * @param prevailingTorqueNm usual torque of the free turning, N·m; at least 0
 * @param driveNmPerDegOrNull stiffness of the drive between angle sensor and bolt head, N·m/deg; above 0, null where the
 *     recorded angle is the head's own
 * @param warmUpOrNull the first warm-up; null where none is stated
 * @param tolerance how far each factor strays from its mean; factors left out do not
 */
public record StatedJoint(
        BoltedJoint joint,
        double prevailingTorqueNm,
        @Nullable Double driveNmPerDegOrNull,
        @Nullable StatedWarmUp warmUpOrNull,
        Map<Factor, Spread> tolerance) {
    private static final double MOST_PREVAILING_NM = 10_000;

    public StatedJoint {
        Objects.requireNonNull(joint, "joint");
        Check.within("prevailingTorqueNm", prevailingTorqueNm, 0, MOST_PREVAILING_NM, "N·m");
        if (driveNmPerDegOrNull != null) {
            Check.above("driveNmPerDeg", driveNmPerDegOrNull, 0, "N·m/deg");
        }
        if (warmUpOrNull != null) {
            warmUpOrNull.temperatures().outgrowthMm(joint);
        }
        tolerance = Map.copyOf(tolerance);
    }

    /** {@return stiffness of the drive, N·m/deg; empty where the recorded angle is the head's own} */
    public OptionalDouble driveNmPerDeg() {
        return driveNmPerDegOrNull == null ? OptionalDouble.empty() : OptionalDouble.of(driveNmPerDegOrNull);
    }

    /** {@return the first warm-up, empty where none is stated} */
    public Optional<StatedWarmUp> warmUp() {
        return Optional.ofNullable(warmUpOrNull);
    }
}
