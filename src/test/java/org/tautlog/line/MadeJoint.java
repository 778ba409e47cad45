package org.tautlog.line;

import java.util.stream.IntStream;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Trace;

/** Parts and encoders that are not as they should be. */
final class MadeJoint {
    private MadeJoint() {}

    static BoltedJoint stronger(BoltedJoint joint, double times) {
        var own = joint.bolt().material();
        var other = own.withYieldStrengthMPa(own.yieldStrengthMPa() * times);
        return new BoltedJoint(joint.bolt().withMaterial(other), joint.layers(), joint.friction());
    }

    /** A stack whose aluminium gives so much more or less that all together are stiffer by a share. */
    static BoltedJoint stiffer(BoltedJoint joint, double share) {
        double wanted = joint.resilienceMmPerN() / (1 + share);
        double low = 0.1;
        double high = 50;
        for (int i = 0; i < 60; i++) {
            double middle = Math.sqrt(low * high);
            if (aluminium(joint, middle).resilienceMmPerN() > wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return aluminium(joint, high);
    }

    private static BoltedJoint aluminium(BoltedJoint joint, double times) {
        var layers = joint.layers().stream()
                .map(layer -> layer.name().equals("washer")
                        ? layer
                        : new Layer(
                                layer.name(),
                                layer.thicknessMm(),
                                new LayerMaterial(
                                        layer.material().name(),
                                        layer.material().youngsModulusMPa() * times,
                                        layer.material().expansionPerK()),
                                layer.shape()))
                .toList();
        return new BoltedJoint(joint.bolt(), layers, joint.friction());
    }

    /** The same tightening under an encoder that counts a scale too much, written to the same tenth of a degree. */
    static Trace counted(Trace trace, double scale) {
        var curve = trace.curve();
        var angles = new double[curve.size()];
        var torques = new double[curve.size()];
        for (int i = 0; i < angles.length; i++) {
            angles[i] = Math.round(curve.angleDeg(i) * scale * 10) / 10.0;
            torques[i] = curve.torqueNm(i);
        }
        var counted = Curve.of(angles, torques);
        if (curve.hasStages()) {
            counted = counted.withStages(
                    IntStream.range(0, angles.length).map(curve::stage).toArray());
        }
        if (curve.hasTime()) {
            counted = counted.withTimeS(
                    IntStream.range(0, angles.length).mapToDouble(curve::timeS).toArray());
        }
        return new Trace(trace.identity(), trace.source(), counted);
    }
}
