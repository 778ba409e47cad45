package org.tautlog.joint;

import java.util.List;
import java.util.Locale;

/**
 * A bolt, the layers it clamps and the friction it is turned against.
 *
 * @param bolt the bolt
 * @param layers the clamped layers in order from under the head; at least one. Together they are as thick as the bolt's
 *     free length is long, within {@value #GRIP_TOLERANCE_MM} mm
 * @param friction its friction
 */
public record BoltedJoint(Bolt bolt, List<Layer> layers, Friction friction) {
    /** How far the layers may miss the bolt's free length, mm: room for rounded drawing dimensions, no more. */
    public static final double GRIP_TOLERANCE_MM = 0.1;

    /** Checks that the layers fill the grip, and copies the list. */
    public BoltedJoint {
        Require.present("bolt", bolt);
        layers = List.copyOf(Require.present("layers", layers));
        if (layers.isEmpty()) throw new IllegalArgumentException("layers is empty; a joint clamps at least one");
        Require.present("friction", friction);
        var stackMm = thicknessMm(layers);
        var freeMm = bolt.freeLengthMm();
        if (Math.abs(stackMm - freeMm) > GRIP_TOLERANCE_MM)
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "layers add up to %.3f mm; they must fill the bolt's free length (segments) of %.3f mm within %s mm",
                    stackMm,
                    freeMm,
                    GRIP_TOLERANCE_MM));
        for (var layer : layers) {
            if (layer.shape() instanceof LayerShape.Cone cone && cone.holeDiameterMm() >= bolt.bearingOuterMm())
                throw new IllegalArgumentException("holeDiameterMm of layer '" + layer.name() + "' is "
                        + cone.holeDiameterMm() + "; it must be below the head's bearingOuterMm, "
                        + bolt.bearingOuterMm() + " mm");
        }
    }

    /**
     * The grip: all layers together.
     *
     * @return mm
     */
    public double gripMm() {
        return thicknessMm(layers);
    }

    /**
     * How much the bolt gives, head, free length and engaged thread together.
     *
     * @return mm/N
     * @see Resilience#boltMmPerN
     */
    public double boltResilienceMmPerN() {
        return Resilience.boltMmPerN(bolt);
    }

    /**
     * How much the clamped layers give, cones opening by the VDI 2230 rule.
     *
     * @return mm/N
     * @see Resilience#clampedMmPerN
     */
    public double clampedResilienceMmPerN() {
        return Resilience.clampedMmPerN(this, ConeAngle.VDI_2230);
    }

    /**
     * How much bolt and layers give together.
     *
     * @return mm/N
     */
    public double resilienceMmPerN() {
        return boltResilienceMmPerN() + clampedResilienceMmPerN();
    }

    /**
     * The share of an axial working load at the head that the bolt feels: layers' give over the whole.
     *
     * <p>Source: VDI 2230-1 (load factor for load introduced under the head), Shigley's joint constant.
     *
     * @return between 0 and 1
     */
    public double loadFactor() {
        var clamped = clampedResilienceMmPerN();
        return clamped / (clamped + boltResilienceMmPerN());
    }

    /**
     * Preload gained by each degree that bolt and thread turn against each other, once all is seated and elastic.
     *
     * <pre>
     * k_F = (P / 360) / (delta_S + delta_P)     N/deg
     * </pre>
     *
     * Source: common practice (one turn stretches bolt and joint together by one pitch).
     *
     * @return N/deg
     */
    public double preloadPerDegN() {
        return bolt.thread().pitchMm() / 360 / resilienceMmPerN();
    }

    /**
     * The same joint with another friction.
     *
     * @param other the friction
     * @return the changed joint
     */
    public BoltedJoint withFriction(Friction other) {
        return new BoltedJoint(bolt, layers, other);
    }

    private static double thicknessMm(List<Layer> layers) {
        return layers.stream().mapToDouble(Layer::thicknessMm).sum();
    }
}
