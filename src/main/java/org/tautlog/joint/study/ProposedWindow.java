package org.tautlog.joint.study;

/**
 * Limits that let a stated share of sound tightenings through, feature by feature. A proposal for a person to judge.
 *
 * @param coverage the share of draws within each pair of limits, half of the rest beyond either end; such as 0.9973
 * @param withinAllShare the share of draws within all limits at once: what the window really lets through
 * @param snugTorqueNm torque at the snug point, N·m
 * @param turnDeg turn past the snug point, deg
 * @param finalTorqueNm torque at the end of the turn, N·m
 * @param torqueRateNmPerDeg slope of the elastic line, N·m/deg
 * @param onsetPastOriginDeg angle of yield onset (gradient halved) past the elastic origin, deg
 */
public record ProposedWindow(
        double coverage,
        double withinAllShare,
        Limits snugTorqueNm,
        Limits turnDeg,
        Limits finalTorqueNm,
        Limits torqueRateNmPerDeg,
        Limits onsetPastOriginDeg) {}
