package org.tautlog.joint.window;

import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.warmup.HotStrength;
import org.tautlog.joint.warmup.Temperatures;
import org.tautlog.joint.warmup.WarmUp;

/**
 * The first warm-up that a specification reckons with.
 *
 * @param temperatures when tightened and when hot
 * @param torsionLeftShare share of the shank's torque that stays after the tool lets go; 0 to 1
 * @param embeddingMm how far rough faces flatten before the warm-up, mm; at least 0
 * @param furtherStretchMmOrNull by how much the plant reckons the warm-up to stretch bolt and joint further, mm; above 0, null
 *     where it reckons with the temperatures alone. Nothing is computed from it: it is held against what they give
 */
public record StatedWarmUp(
        Temperatures temperatures,
        double torsionLeftShare,
        double embeddingMm,
        @Nullable Double furtherStretchMmOrNull) {
    /** Far above what faces flatten; whoever states more has mistaken the unit. */
    private static final double MOST_EMBEDDING_MM = 1;

    /** Far above what any warm-up adds; whoever states more has mistaken the unit. */
    private static final double MOST_STRETCH_MM = 100;

    public StatedWarmUp {
        Objects.requireNonNull(temperatures, "temperatures");
        Check.within("boltC", temperatures.boltC(), HotStrength.COLDEST_C, HotStrength.HOTTEST_C, "deg C");
        Check.within("torsionLeftShare", torsionLeftShare, 0, 1, "a share");
        Check.within("embeddingMm", embeddingMm, 0, MOST_EMBEDDING_MM, "mm");
        if (furtherStretchMmOrNull != null) {
            Check.above("furtherStretchMm", furtherStretchMmOrNull, 0, "mm");
            Check.within("furtherStretchMm", furtherStretchMmOrNull, 0, MOST_STRETCH_MM, "mm");
        }
    }

    /**
     * A warm-up with half the torsion left, no embedding and no stated stretch.
     *
     * @param temperatures when tightened and when hot
     * @return the warm-up
     */
    public static StatedWarmUp of(Temperatures temperatures) {
        return new StatedWarmUp(temperatures, WarmUp.USUAL_TORSION_LEFT_SHARE, 0, null);
    }

    /** {@return by how much the plant reckons the warm-up to stretch bolt and joint further, mm; empty where it states nothing} */
    public OptionalDouble furtherStretchMm() {
        return furtherStretchMmOrNull == null ? OptionalDouble.empty() : OptionalDouble.of(furtherStretchMmOrNull);
    }
}
