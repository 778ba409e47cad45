package org.tautlog.joint;

/**
 * One clamped layer.
 *
 * @param name what it is, such as {@code head} or {@code bearing ladder}
 * @param thicknessMm mm; above 0
 * @param material what it is made of
 * @param shape how much of it carries the load
 */
public record Layer(String name, double thicknessMm, LayerMaterial material, LayerShape shape) {
    /** Checks each value. */
    public Layer {
        Require.named("name", name);
        Require.above("thicknessMm", thicknessMm, 0, "mm");
        Require.present("material", material);
        Require.present("shape", shape);
    }
}
