package org.tautlog.joint;

import java.util.List;
import org.tautlog.joint.LayerShape.Cone;
import org.tautlog.joint.LayerShape.Sleeve;

/** Joints that several tests look at. */
public final class Joints {
    public static final MetricThread M10 = MetricThread.of("M10x1.5");
    public static final LayerMaterial ALUMINIUM = new LayerMaterial("cast aluminium", 72_000, 23e-6);

    private Joints() {}

    /** A slender waisted M10 through-bolt of class 10.9, 380 mm long, in an aluminium sleeve of 900 mm2. */
    public static BoltedJoint longThroughBolt() {
        return longThroughBolt(Friction.both(0.10));
    }

    public static BoltedJoint longThroughBolt(Friction friction) {
        var bolt = new Bolt(
                M10,
                List.of(BoltSegment.shank(380, 8.2)),
                PropertyClass.CLASS_10_9.material(M10),
                HeadForm.SOCKET,
                17,
                11,
                new Engagement(Engagement.Mate.NUT, 205_000));
        return new BoltedJoint(
                bolt, List.of(new Layer("block", 380, ALUMINIUM, new LayerShape.StatedArea(900))), friction);
    }

    /** A short M10 through-bolt with nut in one aluminium layer of 60 mm. */
    public static BoltedJoint shortThroughBolt(double outerDiameterMm) {
        var bolt = new Bolt(
                M10,
                List.of(BoltSegment.shank(36, 10), BoltSegment.thread(24, M10)),
                PropertyClass.CLASS_10_9.material(M10),
                HeadForm.HEXAGON,
                14.63,
                11,
                new Engagement(Engagement.Mate.NUT, 205_000));
        return new BoltedJoint(
                bolt, List.of(new Layer("plate", 60, ALUMINIUM, new Cone(11, outerDiameterMm))), Friction.both(0.12));
    }

    /** The same with the layer as a sleeve, whose hand calculation is one division. */
    public static BoltedJoint sleeved(double outerDiameterMm) {
        var cone = shortThroughBolt(outerDiameterMm);
        return new BoltedJoint(
                cone.bolt(),
                List.of(new Layer("sleeve", 60, ALUMINIUM, new Sleeve(11, outerDiameterMm))),
                cone.friction());
    }
}
