package org.tautlog.joint.window;

import java.util.Objects;
import org.tautlog.joint.warmup.Temperatures;
import org.tautlog.joint.warmup.WarmUp;

/**
 * The first warm-up that a specification reckons with.
 *
 * @param temperatures when tightened and when hot
 * @param torsionLeftShare share of the shank's torque that stays after the tool lets go; 0 to 1
 * @param embeddingMm how far rough faces flatten before the warm-up, mm; at least 0
 */
public record StatedWarmUp(Temperatures temperatures, double torsionLeftShare, double embeddingMm) {
    /** Far above what faces flatten; whoever states more has mistaken the unit. */
    private static final double MOST_EMBEDDING_MM = 1;

    public StatedWarmUp {
        Objects.requireNonNull(temperatures, "temperatures");
        Check.within("torsionLeftShare", torsionLeftShare, 0, 1, "a share");
        Check.within("embeddingMm", embeddingMm, 0, MOST_EMBEDDING_MM, "mm");
    }

    /**
     * A warm-up with half the torsion left and no embedding.
     *
     * @param temperatures when tightened and when hot
     * @return the warm-up
     */
    public static StatedWarmUp of(Temperatures temperatures) {
        return new StatedWarmUp(temperatures, WarmUp.USUAL_TORSION_LEFT_SHARE, 0);
    }
}
