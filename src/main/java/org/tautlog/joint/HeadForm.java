package org.tautlog.joint;

/**
 * The bolt's head, as far as its give under load asks.
 *
 * <p>Source: VDI 2230-1:2015 clause 5.1.1, from memory.
 */
public enum HeadForm {
    /** Hexagon head, with or without flange: gives like 0.5 d of nominal section. */
    HEXAGON(0.5),
    /** Cylindrical head with a socket: gives like 0.4 d of nominal section. */
    SOCKET(0.4);

    private final double substituteLengthShare;

    HeadForm(double substituteLengthShare) {
        this.substituteLengthShare = substituteLengthShare;
    }

    /**
     * The length of nominal section that gives as much as the head does.
     *
     * @return as a share of the nominal diameter
     */
    public double substituteLengthShare() {
        return substituteLengthShare;
    }
}
