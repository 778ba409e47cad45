package org.tautlog.signature;

import java.util.Objects;

/**
 * The clamp load that nobody measured, estimated from the curve and the stated joint. Always an estimate.
 *
 * @param basis what the estimate rests on
 * @param loadKN clamp load where the tool stopped, kN
 * @param lowKN lower bound, kN
 * @param highKN upper bound, kN; the two hold {@link #COVERAGE} of all tightenings if the stated joint is the real one
 * @param apparentFriction friction coefficient of thread and head together that torque and clamp load give
 * @param afterWarmUpKN clamp load left after the first warm-up, cold again, kN; missing where no warm-up is stated
 */
public record ClampLoad(
        Basis basis, Feature loadKN, Feature lowKN, Feature highKN, Feature apparentFriction, Feature afterWarmUpKN) {
    /** Share of tightenings between the bounds: two standard deviations. Source: JCGM 100:2008, clause 6.3.3. */
    public static final double COVERAGE = 0.95;

    /** What an estimate rests on. */
    public enum Basis {
        /** The angle past the elastic origin and the joint's stiffness: the bolt is still elastic. */
        ANGLE,
        /** The torque carried back to the elastic line: past the knee the angle no longer tells. */
        TORQUE_CARRIED_BACK,
        /** What the bolt can bear: the other estimate was above it. */
        BOLT_STRENGTH,
        /** Nothing: there is no estimate. */
        NONE
    }

    public ClampLoad {
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(loadKN, "loadKN");
        Objects.requireNonNull(lowKN, "lowKN");
        Objects.requireNonNull(highKN, "highKN");
        Objects.requireNonNull(apparentFriction, "apparentFriction");
        Objects.requireNonNull(afterWarmUpKN, "afterWarmUpKN");
        if (lowKN.number() > loadKN.number() || loadKN.number() > highKN.number()) {
            throw new IllegalArgumentException("lowKN is " + lowKN.number() + ", loadKN " + loadKN.number()
                    + ", highKN " + highKN.number() + "; they must not fall, kN");
        }
    }

    /**
     * No estimate.
     *
     * @param why the reason in words
     * @return a clamp load whose every feature is missing for that reason
     */
    public static ClampLoad none(String why) {
        var missing = Feature.missing(why);
        return new ClampLoad(Basis.NONE, missing, missing, missing, missing, missing);
    }
}
