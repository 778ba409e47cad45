package org.tautlog.signature;

import java.util.Objects;

/**
 * What else a curve shows that fault signatures and data checks need.
 *
 * @param noiseNm robust noise of one torque sample, N·m
 * @param rundownDeg turn from the first sample to the snug point, deg
 * @param rundownPeakNm highest smoothed torque of the free turning, before the parts can touch, N·m
 * @param rundownSpreadNm robust spread of the torque of the free turning, N·m
 * @param seatingDeg turn from where the torque leaves the prevailing torque to where the gradient is elastic, deg
 * @param snugLostDeg turn past the snug point over which the torque was lost again, below 0.6 of the snug torque, before
 *     the joint ever bore 1.5 times the snug torque, deg, 0 where it held
 * @param snugGradientRatio local gradient at the snug point over the torque rate, a ratio: below 1 where the parts still
 *     draw together
 * @param riseToSnugNmPerDeg mean slope from the first sample to the snug point, N·m/deg
 * @param stickSlipNm peak-to-peak saw of the torque about its local line past the snug point, N·m
 * @param torqueDropNm largest sudden fall of the torque while turning past the snug point, N·m, 0 where there is none
 * @param torqueDropAtDeg where that fall is, deg, on the recording's own axis
 * @param angleSlipDeg turn past the snug point without the torque that belongs to it, after which the torque rises as
 *     before, deg, 0 where there is none
 * @param angleSlipAtDeg where that turn begins, deg, on the recording's own axis
 * @param angleJumpDeg largest jump of the recorded angle between two samples beyond the usual step, or how far it ran back
 *     before the stop, spring-back in pauses aside, deg, 0 where there is none
 * @param springBackDeg how far the angle runs back after the stop, deg
 * @param firstTorqueNm torque of the first samples, N·m
 * @param turnSamples samples between the snug point and the stop
 * @param pauses how many times the tool stopped and re-started under load
 * @param backSteps how many samples run back outside of pauses and spring-back
 * @param saturatedSamples longest run of turning samples at the highest torque, to a digit, where it is several times as long as
 *     any on the levels below; else 0
 * @param endsRunning whether the recording ends while the tool is still turning: no fall of the torque, no standing still,
 *     no spring-back
 * @param duplicated whether the recording holds its samples twice
 */
public record CurveMarks(
        Feature noiseNm,
        Feature rundownDeg,
        Feature rundownPeakNm,
        Feature rundownSpreadNm,
        Feature seatingDeg,
        Feature snugLostDeg,
        Feature snugGradientRatio,
        Feature riseToSnugNmPerDeg,
        Feature stickSlipNm,
        Feature torqueDropNm,
        Feature torqueDropAtDeg,
        Feature angleSlipDeg,
        Feature angleSlipAtDeg,
        Feature angleJumpDeg,
        Feature springBackDeg,
        Feature firstTorqueNm,
        int turnSamples,
        int pauses,
        int backSteps,
        int saturatedSamples,
        boolean endsRunning,
        boolean duplicated) {
    public CurveMarks {
        Objects.requireNonNull(noiseNm, "noiseNm");
        Objects.requireNonNull(rundownDeg, "rundownDeg");
        Objects.requireNonNull(rundownPeakNm, "rundownPeakNm");
        Objects.requireNonNull(rundownSpreadNm, "rundownSpreadNm");
        Objects.requireNonNull(seatingDeg, "seatingDeg");
        Objects.requireNonNull(snugLostDeg, "snugLostDeg");
        Objects.requireNonNull(snugGradientRatio, "snugGradientRatio");
        Objects.requireNonNull(riseToSnugNmPerDeg, "riseToSnugNmPerDeg");
        Objects.requireNonNull(stickSlipNm, "stickSlipNm");
        Objects.requireNonNull(torqueDropNm, "torqueDropNm");
        Objects.requireNonNull(torqueDropAtDeg, "torqueDropAtDeg");
        Objects.requireNonNull(angleSlipDeg, "angleSlipDeg");
        Objects.requireNonNull(angleSlipAtDeg, "angleSlipAtDeg");
        Objects.requireNonNull(angleJumpDeg, "angleJumpDeg");
        Objects.requireNonNull(springBackDeg, "springBackDeg");
        Objects.requireNonNull(firstTorqueNm, "firstTorqueNm");
    }

    /**
     * Marks of a curve that nothing was read from.
     *
     * @param why the reason in words
     * @return marks whose every feature is missing for that reason
     */
    public static CurveMarks none(String why) {
        var missing = Feature.missing(why);
        return new CurveMarks(
                missing, missing, missing, missing, missing, missing, missing, missing, missing, missing, missing,
                missing, missing, missing, missing, missing, 0, 0, 0, 0, false, false);
    }
}
