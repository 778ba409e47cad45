package org.tautlog.line;

import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * A lot of bolts: one heat, one heat treatment, one coating.
 *
 * @param mark the supplier's mark
 * @param yieldMPa mean yield strength Rp0.2, MPa
 * @param frictionShift friction of its coating less the usual one
 */
record BoltLot(String mark, double yieldMPa, double frictionShift) {
    /** Mean over all lots. */
    static final double USUAL_YIELD_MPA = 1022;

    /** Within one lot. */
    static final double YIELD_SPREAD_MPA = 11;

    private static final int FIRST = 17;
    /** Not a multiple of a shift, so that lots change inside shifts. */
    private static final int ENGINES = 23;

    static BoltLot ofEngine(int engine, long seed) {
        int index = (engine - 1) / ENGINES;
        var gauss = ZigguratSampler.NormalizedGaussian.of(Seeds.stream(seed, Seeds.Use.LOT, index));
        double between = Math.max(-2, Math.min(2, gauss.sample()));
        double coating = Math.max(-2, Math.min(2, gauss.sample()));
        return new BoltLot("A" + (FIRST + index), USUAL_YIELD_MPA + 14 * between, 0.002 * coating);
    }
}
