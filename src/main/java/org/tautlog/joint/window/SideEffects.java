package org.tautlog.joint.window;

import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Embedding;
import org.tautlog.joint.TiltedHead;

/**
 * What comes on top of a tightening as drawn: bending under a head that is not square, and clamp load lost to faces that
 * flatten.
 *
 * @param tiltDeg the tilt reckoned with, deg; bending goes in proportion to it
 * @param bendingMPa bending stress that this tilt adds at the under-head fillet, MPa
 * @param bendingShareOfYield that stress over the yield strength
 * @param statedFlatteningMm how far the faces flatten by the specification, mm
 * @param statedLossN the clamp load that this takes, N
 * @param guideFlatteningMm how far faces of medium roughness flatten by guide values, mm
 * @param guideLossN the clamp load that this would take, N
 */
public record SideEffects(
        double tiltDeg,
        double bendingMPa,
        double bendingShareOfYield,
        double statedFlatteningMm,
        double statedLossN,
        double guideFlatteningMm,
        double guideLossN) {
    private static final double TILT_DEG = 0.1;

    /**
     * Works them out for a joint.
     *
     * @param joint bolt and layers
     * @param preloadN the clamp load at which the head settles, N; at least 0
     * @param statedFlatteningMm how far the faces flatten by the specification, mm
     * @return the side effects
     */
    public static SideEffects of(BoltedJoint joint, double preloadN, double statedFlatteningMm) {
        var medium = Embedding.Roughness.MEDIUM;
        return new SideEffects(
                TILT_DEG,
                TiltedHead.bendingMPa(joint.bolt(), TILT_DEG, preloadN),
                TiltedHead.shareOfYield(joint.bolt(), TILT_DEG, preloadN),
                statedFlatteningMm,
                statedFlatteningMm / joint.resilienceMmPerN(),
                Embedding.flatteningMm(joint, medium, Embedding.Loading.AXIAL),
                Embedding.lossN(joint, medium, Embedding.Loading.AXIAL));
    }
}
