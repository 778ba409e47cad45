package org.tautlog.joint.warmup;

import java.util.Locale;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Require;

/**
 * A stated further stretch by warm-up, held against what the joint's expansion can give.
 *
 * @param claimedMm the further stretch stated, mm
 * @param computedMm what the stated temperatures give in this joint, mm
 * @param statedRiseK the even temperature rise that gives as much as the stated temperatures, K
 * @param neededRiseK the even temperature rise that the stated stretch would need, K
 */
public record StretchClaim(double claimedMm, double computedMm, double statedRiseK, double neededRiseK) {
    /** How far claim and computation may differ and still count as fitting: expansion data are no better than this. */
    private static final double FITS_WITHIN_SHARE = 0.15;

    /**
     * Holds a stated stretch against a joint.
     *
     * @param joint bolt and layers; evenly warmed, the layers outgrow the bolt
     * @param claimedMm the further stretch stated, mm; above 0
     * @param temperatures the temperatures stated
     * @return the stated stretch beside what it would need
     * @throws IllegalArgumentException where the layers of an evenly warmed joint do not outgrow its bolt
     */
    public static StretchClaim check(BoltedJoint joint, double claimedMm, Temperatures temperatures) {
        Require.above("claimedMm", claimedMm, 0, "mm");
        double perKMm = mmPerK(joint);
        double computedMm = temperatures.outgrowthMm(joint);
        return new StretchClaim(claimedMm, computedMm, computedMm / perKMm, claimedMm / perKMm);
    }

    private static double mmPerK(BoltedJoint joint) {
        double perKMm = Temperatures.even(joint, 0, 1).outgrowthMm(joint);
        if (perKMm <= 0) {
            throw new IllegalArgumentException("layers outgrow the bolt by " + perKMm
                    + " mm/K; a claimed further stretch needs layers that expand more than the bolt");
        }
        return perKMm;
    }

    /**
     * Whether the stated stretch is what the joint gives, within 15 %.
     *
     * @return true where it fits
     */
    public boolean fits() {
        return Math.abs(claimedMm - computedMm) <= FITS_WITHIN_SHARE * computedMm;
    }

    /**
     * The stated stretch and its need in a sentence.
     *
     * @return English
     */
    public String sentence() {
        return fits()
                ? String.format(
                        Locale.ROOT,
                        "The stated further stretch of %.2f mm fits: the stated temperatures give %.2f mm.",
                        claimedMm,
                        computedMm)
                : String.format(
                        Locale.ROOT,
                        "The stated further stretch of %.2f mm does not fit: the stated temperatures, as much as an even rise"
                                + " of %.0f K, give %.2f mm; %.2f mm would need a rise of %.0f K.",
                        claimedMm,
                        statedRiseK,
                        computedMm,
                        claimedMm,
                        neededRiseK);
    }
}
