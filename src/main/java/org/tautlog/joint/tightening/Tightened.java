package org.tautlog.joint.tightening;

import org.tautlog.joint.Require;

/**
 * A bolt at the end of its turn, as the model has it.
 *
 * @param preloadN its preload, N
 * @param torqueNm the final torque, prevailing torque included, N·m
 * @param shankTorqueNm the part of it in the shank, N·m
 * @param plasticStretchMm how far the bolt has stretched for good, mm; 0 while elastic
 * @param plasticStrain the largest plastic strain of any section, a share
 * @param yieldShare preload over the preload at which the weakest section reaches its yield strength
 * @param yielded whether the bolt yielded while it was turned, by {@link PlasticStretch#elasticLimitN}
 */
public record Tightened(
        double preloadN,
        double torqueNm,
        double shankTorqueNm,
        double plasticStretchMm,
        double plasticStrain,
        double yieldShare,
        boolean yielded) {
    /** Checks each value. */
    public Tightened {
        Require.atLeast("preloadN", preloadN, 0, "N");
        Require.finite("torqueNm", torqueNm);
        Require.finite("shankTorqueNm", shankTorqueNm);
        Require.atLeast("plasticStretchMm", plasticStretchMm, 0, "mm");
        Require.atLeast("plasticStrain", plasticStrain, 0, "");
        Require.atLeast("yieldShare", yieldShare, 0, "");
    }
}
