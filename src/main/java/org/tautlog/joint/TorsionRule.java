package org.tautlog.joint;

/** When a twisted and stretched section counts as yielding: how its section modulus in torsion is taken. */
public enum TorsionRule {
    /**
     * When the whole section shears plastically: W = pi d^3 / 12, factor 3/2 in the usual formula.
     *
     * <p>Source: VDI 2230-1:2003 and 2015, equation R7.
     */
    FULLY_PLASTIC(12),
    /**
     * When the outermost fibre yields: W = pi d^3 / 16, factor 2.
     *
     * <p>Source: VDI 2230:1986.
     */
    FIRST_FIBRE(16);

    private final int divisor;

    TorsionRule(int divisor) {
        this.divisor = divisor;
    }

    /**
     * The section modulus in torsion of a full circle.
     *
     * @param diameterMm mm
     * @return mm3
     */
    public double sectionModulusMm3(double diameterMm) {
        return Math.PI * diameterMm * diameterMm * diameterMm / divisor;
    }
}
