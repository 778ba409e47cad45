package org.tautlog.joint.warmup;

import java.util.Locale;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Require;

/**
 * A claimed further stretch by warm-up, held against what the joint's expansion can give.
 *
 * @param claimedMm the further stretch claimed, mm
 * @param computedMm what the stated rise gives in this joint, mm
 * @param statedRiseK the temperature rise stated, K
 * @param neededRiseK the even temperature rise that the claim would need, K
 */
public record StretchClaim(double claimedMm, double computedMm, double statedRiseK, double neededRiseK) {
    /** How far claim and computation may differ and still count as fitting: expansion data are no better than this. */
    private static final double FITS_WITHIN_SHARE = 0.15;

    /**
     * Holds a claim against a joint.
     *
     * @param joint bolt and layers; the layers expand more than the bolt
     * @param claimedMm the further stretch claimed, mm; above 0
     * @param statedRiseK the temperature rise of bolt and layers alike, K; above 0
     * @return the claim beside what it would need
     */
    public static StretchClaim check(BoltedJoint joint, double claimedMm, double statedRiseK) {
        Require.above("claimedMm", claimedMm, 0, "mm");
        Require.above("statedRiseK", statedRiseK, 0, "K");
        var perKMm = Temperatures.even(joint, 0, 1).outgrowthMm(joint);
        if (perKMm <= 0)
            throw new IllegalArgumentException("layers outgrow the bolt by " + perKMm
                    + " mm/K; a claimed further stretch needs layers that expand more than the bolt");
        return new StretchClaim(claimedMm, perKMm * statedRiseK, statedRiseK, claimedMm / perKMm);
    }

    /**
     * Whether the claim is what the joint gives, within 15 %.
     *
     * @return true where it fits
     */
    public boolean fits() {
        return Math.abs(claimedMm - computedMm) <= FITS_WITHIN_SHARE * computedMm;
    }

    /**
     * The claim and its need in a sentence.
     *
     * @return English
     */
    public String sentence() {
        return fits()
                ? String.format(
                        Locale.ROOT,
                        "A rise of %.0f K gives %.2f mm of further stretch; the claimed %.2f mm fit.",
                        statedRiseK,
                        computedMm,
                        claimedMm)
                : String.format(
                        Locale.ROOT,
                        "The claimed %.2f mm of further stretch would need a rise of %.0f K; the stated %.0f K give %.2f mm.",
                        claimedMm,
                        neededRiseK,
                        statedRiseK,
                        computedMm);
    }
}
