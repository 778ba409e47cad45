package org.tautlog.joint.warmup;

import java.util.Collections;
import java.util.List;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Require;

/**
 * The temperatures of bolt and layers when tightened and when hot.
 *
 * @param assemblyC temperature of everything when tightened, deg C
 * @param boltC the bolt's mean temperature when hot, deg C
 * @param layersC each layer's mean temperature when hot, in the joint's order, deg C; at least one
 */
public record Temperatures(double assemblyC, double boltC, List<Double> layersC) {
    private static final double ABSOLUTE_ZERO_C = -273.15;

    /** Checks each temperature, and copies the list. */
    public Temperatures {
        Require.above("assemblyC", assemblyC, ABSOLUTE_ZERO_C, "deg C");
        Require.above("boltC", boltC, ABSOLUTE_ZERO_C, "deg C");
        layersC = List.copyOf(Require.present("layersC", layersC));
        if (layersC.isEmpty()) throw new IllegalArgumentException("layersC is empty; each layer has a temperature");
        for (var layerC : layersC) Require.above("layersC", layerC, ABSOLUTE_ZERO_C, "deg C");
    }

    /**
     * Bolt and layers equally hot.
     *
     * @param joint the joint, for the number of its layers
     * @param assemblyC temperature when tightened, deg C
     * @param hotC temperature when hot, deg C
     * @return the temperatures
     */
    public static Temperatures even(BoltedJoint joint, double assemblyC, double hotC) {
        return new Temperatures(
                assemblyC, hotC, Collections.nCopies(joint.layers().size(), hotC));
    }

    /**
     * By how much the layers would outgrow the bolt if nothing held them.
     *
     * <pre>
     * sum(alpha_i t_i (T_i - T_0)) - alpha_S L (T_S - T_0)      mm
     * </pre>
     *
     * Source: VDI 2230-1:2015 clause 5.4.2.3 (thermal preload change), from memory; the same in Bickford.
     *
     * @param joint the joint; it has as many layers as there are layer temperatures
     * @return mm; negative where the bolt outgrows the layers
     * @throws IllegalArgumentException when the numbers of layers differ
     */
    public double outgrowthMm(BoltedJoint joint) {
        var layers = joint.layers();
        if (layers.size() != layersC.size())
            throw new IllegalArgumentException(
                    "layersC has " + layersC.size() + " temperatures; the joint has " + layers.size() + " layers");
        var bolt = joint.bolt();
        var sum = -bolt.material().expansionPerK() * bolt.freeLengthMm() * (boltC - assemblyC);
        for (int i = 0; i < layers.size(); i++) {
            var layer = layers.get(i);
            sum += layer.material().expansionPerK() * layer.thicknessMm() * (layersC.get(i) - assemblyC);
        }
        return sum;
    }
}
