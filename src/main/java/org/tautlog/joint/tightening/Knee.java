package org.tautlog.joint.tightening;

/** How a bolt's stress goes on past the straight elastic line: strain eps_p beside stress sigma. */
public enum Knee {
    /**
     * Round, as real bolts have it: through yield strength at 0.2 % and tensile strength at uniform elongation.
     *
     * <pre>
     * eps_p = 0.002 (sigma / Re)^n      n = ln(eps_u / 0.002) / ln(Rm / Re)
     * </pre>
     *
     * Source: Ramberg and Osgood, NACA Technical Note 902 (1943); the exponent from two points as in MIL-HDBK-5, from memory.
     */
    ROUND,
    /**
     * Sharp: straight to the yield strength, then straight along the hardening modulus.
     *
     * <pre>
     * eps_p = (sigma - Re) / E_p      E_p = H / (1 - H/E)
     * </pre>
     *
     * Source: elementary plasticity.
     */
    SHARP
}
