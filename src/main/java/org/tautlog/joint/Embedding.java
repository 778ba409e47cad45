package org.tautlog.joint;

/**
 * Preload lost in the first hours because rough faces flatten.
 *
 * <pre>
 * F_Z = f_Z / (delta_S + delta_P)      N
 * f_Z = thread + bearing faces of head and nut + joints between layers, mm
 * </pre>
 *
 * Source: VDI 2230-1:2015 clause 5.4.2 and table 5, from memory.
 */
public final class Embedding {
    private static final double MM_PER_MICROMETRE = 1e-3;

    /** How rough the faces are, by mean roughness depth Rz. Source: VDI 2230-1:2015 table 5, from memory. */
    public enum Roughness {
        /** Rz below 10 micrometres. */
        FINE(3, 2.5, 1.5, 3, 2),
        /** Rz from 10 to below 40 micrometres. */
        MEDIUM(3, 3, 2, 4.5, 2.5),
        /** Rz from 40 to below 160 micrometres. */
        ROUGH(3, 4, 3, 6.5, 3.5);

        private final double threadMicrometres;
        private final double axialFaceMicrometres;
        private final double axialJointMicrometres;
        private final double shearFaceMicrometres;
        private final double shearJointMicrometres;

        Roughness(
                double threadMicrometres,
                double axialFaceMicrometres,
                double axialJointMicrometres,
                double shearFaceMicrometres,
                double shearJointMicrometres) {
            this.threadMicrometres = threadMicrometres;
            this.axialFaceMicrometres = axialFaceMicrometres;
            this.axialJointMicrometres = axialJointMicrometres;
            this.shearFaceMicrometres = shearFaceMicrometres;
            this.shearJointMicrometres = shearJointMicrometres;
        }
    }

    /** What the joint carries in service. */
    public enum Loading {
        /** Load along the bolt. */
        AXIAL,
        /** Load across the bolt as well. */
        SHEAR
    }

    private Embedding() {}

    /**
     * How far all faces flatten.
     *
     * <p>With a nut there are two bearing faces and a joint between each two layers; with a tapped hole one bearing face,
     * and the last layer meets the tapped part.
     *
     * @param joint the joint
     * @param roughness how rough its faces are
     * @param loading what it carries
     * @return mm
     */
    public static double flatteningMm(BoltedJoint joint, Roughness roughness, Loading loading) {
        var nut = joint.bolt().engagement().mate() == Engagement.Mate.NUT;
        var faces = nut ? 2 : 1;
        var joints = joint.layers().size() - (nut ? 1 : 0);
        var axial = loading == Loading.AXIAL;
        var face = axial ? roughness.axialFaceMicrometres : roughness.shearFaceMicrometres;
        var between = axial ? roughness.axialJointMicrometres : roughness.shearJointMicrometres;
        return (roughness.threadMicrometres + faces * face + joints * between) * MM_PER_MICROMETRE;
    }

    /**
     * The preload lost.
     *
     * @param joint the joint
     * @param roughness how rough its faces are
     * @param loading what it carries
     * @return N
     */
    public static double lossN(BoltedJoint joint, Roughness roughness, Loading loading) {
        return flatteningMm(joint, roughness, loading) / joint.resilienceMmPerN();
    }
}
