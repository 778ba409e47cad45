package org.tautlog.joint;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * A strength class of steel bolts, by its least values.
 *
 * <p>Source: ISO 898-1:2013, table 3 (yield, tensile strength, proof stress). Class 8.8 has two rows, up to 16 mm and
 * above.
 */
public enum PropertyClass {
    /** Class 8.8. */
    CLASS_8_8("8.8", 640, 800, 580, 0.06),
    /** Class 10.9. */
    CLASS_10_9("10.9", 940, 1040, 830, 0.04),
    /** Class 12.9. */
    CLASS_12_9("12.9", 1100, 1220, 970, 0.03);

    private static final double LARGEST_OF_SMALL_ROW_MM = 16;

    /** Source: VDI 2230-1 table A9 for bolt steel, from memory. */
    private static final double STEEL_MODULUS_MPA = 205_000;

    /** Source: VDI 2230-1 table A9 for bolt steel, from memory. */
    private static final double STEEL_EXPANSION_PER_K = 11.5e-6;

    private final String designation;
    private final double yieldStrengthMPa;
    private final double ultimateStrengthMPa;
    private final double proofStressMPa;
    private final double uniformElongation;

    PropertyClass(
            String designation,
            double yieldStrengthMPa,
            double ultimateStrengthMPa,
            double proofStressMPa,
            double uniformElongation) {
        this.designation = designation;
        this.yieldStrengthMPa = yieldStrengthMPa;
        this.ultimateStrengthMPa = ultimateStrengthMPa;
        this.proofStressMPa = proofStressMPa;
        this.uniformElongation = uniformElongation;
    }

    /**
     * Reads a class's name.
     *
     * @param designation {@code 8.8}, {@code 10.9} or {@code 12.9}
     * @return the class
     * @throws IllegalArgumentException when there is no such class here; the message lists those there are
     */
    public static PropertyClass of(String designation) {
        return Arrays.stream(values())
                .filter(known -> known.designation.equals(designation.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("property class '" + designation
                        + "' is unknown; known classes: "
                        + Arrays.stream(values())
                                .map(PropertyClass::designation)
                                .collect(Collectors.joining(", "))));
    }

    /**
     * The class's name as the standard writes it.
     *
     * @return such as {@code 10.9}
     */
    public String designation() {
        return designation;
    }

    /**
     * Least yield strength: lower yield or proof stress Rp0.2.
     *
     * @param thread the bolt's thread, which chooses the row of class 8.8
     * @return MPa
     */
    public double yieldStrengthMPa(MetricThread thread) {
        return yieldStrengthMPa + (bigRow(thread) ? 20 : 0);
    }

    /**
     * Least tensile strength.
     *
     * @param thread the bolt's thread, which chooses the row of class 8.8
     * @return MPa
     */
    public double ultimateStrengthMPa(MetricThread thread) {
        return ultimateStrengthMPa + (bigRow(thread) ? 30 : 0);
    }

    /**
     * Stress under proof load.
     *
     * @param thread the bolt's thread, which chooses the row of class 8.8
     * @return MPa
     */
    public double proofStressMPa(MetricThread thread) {
        return proofStressMPa + (bigRow(thread) ? 20 : 0);
    }

    /**
     * A bolt steel with this class's least strengths.
     *
     * <p>Modulus and expansion as tabled for bolt steel (from memory). Uniform elongation 6, 4 and 3 % for 8.8, 10.9 and
     * 12.9 (from memory; the lot's certificate is better), and hardening as the straight line from yield to tensile
     * strength over it.
     *
     * @param thread the bolt's thread
     * @return the material
     */
    public BoltMaterial material(MetricThread thread) {
        var yieldMPa = yieldStrengthMPa(thread);
        var ultimateMPa = ultimateStrengthMPa(thread);
        return new BoltMaterial(
                STEEL_MODULUS_MPA,
                yieldMPa,
                ultimateMPa,
                STEEL_EXPANSION_PER_K,
                uniformElongation,
                (ultimateMPa - yieldMPa) / uniformElongation);
    }

    private boolean bigRow(MetricThread thread) {
        return this == CLASS_8_8 && thread.nominalMm() > LARGEST_OF_SMALL_ROW_MM;
    }
}
