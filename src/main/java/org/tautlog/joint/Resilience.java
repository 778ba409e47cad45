package org.tautlog.joint;

import java.util.List;

/** How much bolt and clamped layers give under load, mm/N: the inverse of stiffness. */
public final class Resilience {
    /** Engaged thread that still stretches, as a share of the nominal diameter. Source: VDI 2230-1 clause 5.1.1, from memory. */
    private static final double ENGAGED_THREAD_SHARE = 0.5;

    private Resilience() {}

    /**
     * The bolt, as springs in a row: head, segments, engaged thread, mating thread.
     *
     * <pre>
     * delta_S = lSK/(E AN) + sum(l_i/(E A_i)) + lG/(E A3) + lM/(EM AN)      mm/N
     * lSK = 0.5 d (hexagon) or 0.4 d (socket)    lG = 0.5 d    lM = 0.4 d (nut) or 0.33 d (tapped hole)
     * AN nominal section, A3 root section, EM modulus of nut or tapped part
     * </pre>
     *
     * Source: VDI 2230-1:2015 clause 5.1.1, from memory.
     *
     * @param bolt the bolt
     * @return mm/N
     */
    public static double boltMmPerN(Bolt bolt) {
        var thread = bolt.thread();
        var modulusMPa = bolt.material().youngsModulusMPa();
        var engagement = bolt.engagement();
        var d = thread.nominalMm();
        return bolt.headForm().substituteLengthShare() * d / (modulusMPa * thread.nominalAreaMm2())
                + freeLengthMmPerN(bolt)
                + engagedLengthMm(thread) / (modulusMPa * thread.rootAreaMm2())
                + engagement.mate().substituteLengthShare()
                        * d
                        / (engagement.youngsModulusMPa() * thread.nominalAreaMm2());
    }

    /** The length of engaged thread that still stretches like free thread. */
    static double engagedLengthMm(MetricThread thread) {
        return ENGAGED_THREAD_SHARE * thread.nominalMm();
    }

    /**
     * The bolt's free length alone, without head and engaged thread.
     *
     * @param bolt the bolt
     * @return mm/N
     */
    public static double freeLengthMmPerN(Bolt bolt) {
        var sum = 0.0;
        for (var segment : bolt.segments()) sum += segment.lengthMm() / segment.areaMm2();
        return sum / bolt.material().youngsModulusMPa();
    }

    /**
     * The clamped layers, as springs in a row; cones are cut at each layer's face and edge, and each piece is a frustum
     * or a ring.
     *
     * <p>With a nut the cone opens from both ends and is widest halfway; with a tapped hole it opens from the head to the
     * thread. The cone rule's outer diameter is the mean over the cone layers, weighted by thickness.
     *
     * <p>Source: VDI 2230-1:2015 clause 5.1.2 (for one wide layer the same as its cone, for one narrow layer the same as
     * its cone with sleeve); layers of different materials as Shigley, 10th ed., example 8-2.
     *
     * @param joint the joint
     * @param angle how steeply the cone opens
     * @return mm/N
     */
    public static double clampedMmPerN(BoltedJoint joint, ConeAngle angle) {
        var bolt = joint.bolt();
        var mate = bolt.engagement().mate();
        var gripMm = joint.gripMm();
        var tangent = angle.tangent(gripMm, bolt.bearingOuterMm(), meanOuterMm(joint.layers(), bolt), mate);
        var widestMm = mate == Engagement.Mate.NUT ? gripMm / 2 : gripMm;
        var sum = 0.0;
        var topMm = 0.0;
        for (var layer : joint.layers()) {
            var bottomMm = topMm + layer.thicknessMm();
            sum += areaIntegralPerMm(layer, topMm, bottomMm, gripMm, widestMm, bolt.bearingOuterMm(), tangent)
                    / layer.material().youngsModulusMPa();
            topMm = bottomMm;
        }
        return sum;
    }

    /** The integral of dz/A(z) over the layer, 1/mm. */
    private static double areaIntegralPerMm(
            Layer layer,
            double topMm,
            double bottomMm,
            double gripMm,
            double widestMm,
            double bearingMm,
            double tangent) {
        if (layer.shape() instanceof LayerShape.StatedArea stated) return layer.thicknessMm() / stated.areaMm2();
        if (layer.shape() instanceof LayerShape.Sleeve sleeve) return layer.thicknessMm() / sleeve.areaMm2();
        var cone = (LayerShape.Cone) layer.shape();
        var fromHead = coneFromFacePerMm(cone, topMm, Math.min(bottomMm, widestMm), bearingMm, tangent);
        var fromNut = coneFromFacePerMm(
                cone, gripMm - bottomMm, Math.min(gripMm - topMm, gripMm - widestMm), bearingMm, tangent);
        return fromHead + fromNut;
    }

    /** The integral of dz/A(z) from one depth to another below a bearing face, the cone capped at the layer's edge. */
    private static double coneFromFacePerMm(
            LayerShape.Cone cone, double fromMm, double toMm, double bearingMm, double tangent) {
        if (toMm <= fromMm) return 0;
        var edgeDepthMm = Math.max(0, (cone.outerDiameterMm() - bearingMm) / (2 * tangent));
        var coneEndMm = Math.min(Math.max(edgeDepthMm, fromMm), toMm);
        var ringMm2 = MetricThread.circleMm2(cone.outerDiameterMm()) - MetricThread.circleMm2(cone.holeDiameterMm());
        return frustumPerMm(cone.holeDiameterMm(), bearingMm + 2 * fromMm * tangent, coneEndMm - fromMm, tangent)
                + (toMm - coneEndMm) / ringMm2;
    }

    /**
     * One frustum around a hole: the integral of dz/A(z), to be divided by Young's modulus.
     *
     * <pre>
     * ln( (2 t tan(a) + D - d)(D + d) / ((2 t tan(a) + D + d)(D - d)) ) / (pi d tan(a))      1/mm
     * D small diameter, d hole, t thickness, mm; a half apex angle
     * </pre>
     *
     * Source: Shigley's Mechanical Engineering Design, 10th ed., equation 8-19.
     *
     * @param holeMm the hole, mm; above 0
     * @param smallDiameterMm the diameter at the small end, mm; above the hole
     * @param thicknessMm mm; at least 0
     * @param tangent tangent of the half apex angle; above 0
     * @return 1/mm
     */
    public static double frustumPerMm(double holeMm, double smallDiameterMm, double thicknessMm, double tangent) {
        Require.above("holeMm", holeMm, 0, "mm");
        Require.above("smallDiameterMm", smallDiameterMm, holeMm, "mm (holeMm)");
        Require.atLeast("thicknessMm", thicknessMm, 0, "mm");
        Require.above("tangent", tangent, 0, "");
        var largeMm = smallDiameterMm + 2 * thicknessMm * tangent;
        return Math.log((largeMm - holeMm)
                        * (smallDiameterMm + holeMm)
                        / ((largeMm + holeMm) * (smallDiameterMm - holeMm)))
                / (Math.PI * holeMm * tangent);
    }

    private static double meanOuterMm(List<Layer> layers, Bolt bolt) {
        var weighted = 0.0;
        var thicknessMm = 0.0;
        for (var layer : layers) {
            if (layer.shape() instanceof LayerShape.Cone cone) {
                weighted += cone.outerDiameterMm() * layer.thicknessMm();
                thicknessMm += layer.thicknessMm();
            }
        }
        return thicknessMm > 0 ? weighted / thicknessMm : bolt.bearingOuterMm();
    }
}
