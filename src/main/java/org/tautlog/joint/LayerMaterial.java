package org.tautlog.joint;

/**
 * What a clamped layer is made of.
 *
 * @param name what the trade calls it, such as {@code AlSi7Mg}
 * @param youngsModulusMPa Young's modulus, MPa; above 0
 * @param expansionPerK coefficient of linear thermal expansion, 1/K; at least 0
 */
public record LayerMaterial(String name, double youngsModulusMPa, double expansionPerK) {
    /** Checks each value. */
    public LayerMaterial {
        Require.named("name", name);
        Require.above("youngsModulusMPa", youngsModulusMPa, 0, "MPa");
        Require.atLeast("expansionPerK", expansionPerK, 0, "1/K");
    }
}
