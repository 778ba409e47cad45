package org.tautlog.joint;

/**
 * What a bolt is made of, as far as tightening and warm-up ask.
 *
 * <p>The hardening modulus is for those who draw the stress past yield as a straight line:
 *
 * <pre>
 * sigma = Re + H (epsilon - Re/E)     MPa, for epsilon above Re/E
 * </pre>
 *
 * @param youngsModulusMPa Young's modulus E, MPa; above 0
 * @param yieldStrengthMPa the stress Re at which the straight elastic line ends (proof stress Rp0.2), MPa; above 0
 * @param ultimateStrengthMPa tensile strength Rm, MPa; not below the yield strength
 * @param expansionPerK coefficient of linear thermal expansion, 1/K; at least 0
 * @param uniformElongation strain at which necking starts, a share (0.05 is 5 %); above 0, at most 1
 * @param hardeningModulusMPa slope H of stress over total strain past yield, MPa; from 0 (perfectly plastic) to below E
 */
public record BoltMaterial(
        double youngsModulusMPa,
        double yieldStrengthMPa,
        double ultimateStrengthMPa,
        double expansionPerK,
        double uniformElongation,
        double hardeningModulusMPa) {
    /** Elastic Poisson's ratio of steel. Source: common practice. */
    private static final double POISSONS_RATIO = 0.3;

    /** Checks each value, and that yield does not lie above the tensile strength. */
    public BoltMaterial {
        Require.above("youngsModulusMPa", youngsModulusMPa, 0, "MPa");
        Require.above("yieldStrengthMPa", yieldStrengthMPa, 0, "MPa");
        Require.above("ultimateStrengthMPa", ultimateStrengthMPa, 0, "MPa");
        if (yieldStrengthMPa > ultimateStrengthMPa)
            throw new IllegalArgumentException("yieldStrengthMPa is " + yieldStrengthMPa
                    + "; it must not be above ultimateStrengthMPa, " + ultimateStrengthMPa + " MPa");
        Require.atLeast("expansionPerK", expansionPerK, 0, "1/K");
        Require.above("uniformElongation", uniformElongation, 0, "");
        Require.within("uniformElongation", uniformElongation, 0, 1, "");
        Require.atLeast("hardeningModulusMPa", hardeningModulusMPa, 0, "MPa");
        if (hardeningModulusMPa >= youngsModulusMPa)
            throw new IllegalArgumentException("hardeningModulusMPa is " + hardeningModulusMPa
                    + "; it must be below youngsModulusMPa, " + youngsModulusMPa + " MPa");
    }

    /**
     * The same material from a stronger or weaker lot: tensile strength moves along with yield strength.
     *
     * @param otherYieldStrengthMPa MPa; above 0
     * @return the changed material
     */
    public BoltMaterial withYieldStrengthMPa(double otherYieldStrengthMPa) {
        return new BoltMaterial(
                youngsModulusMPa,
                otherYieldStrengthMPa,
                ultimateStrengthMPa + otherYieldStrengthMPa - yieldStrengthMPa,
                expansionPerK,
                uniformElongation,
                hardeningModulusMPa);
    }

    /**
     * The shear modulus, G = E / (2 (1 + 0.3)).
     *
     * @return MPa
     */
    public double shearModulusMPa() {
        return youngsModulusMPa / (2 * (1 + POISSONS_RATIO));
    }

    /**
     * The slope of stress over plastic strain, H / (1 - H/E).
     *
     * @return MPa; 0 for a perfectly plastic material
     */
    public double plasticModulusMPa() {
        return hardeningModulusMPa / (1 - hardeningModulusMPa / youngsModulusMPa);
    }
}
