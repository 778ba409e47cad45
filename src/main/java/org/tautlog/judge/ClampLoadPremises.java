package org.tautlog.judge;

import java.util.List;
import java.util.Optional;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.signature.EndState;

/**
 * What an estimate of clamp load takes for granted, and which finding speaks against it. Then there is no estimate: how far
 * it would be off hangs on what really lies between the parts or how far the socket slipped, which no curve tells, so that no
 * bounds would be honest.
 *
 * <p>What is not listed leaves the estimate sound. Friction cancels out of it, a weak bolt is as stiff as a strong one, a turn
 * too short or too long is still the turn that was recorded, what samples far apart leave open is in the estimate's own
 * uncertainty, and a drive that twists more than usual stays within the bounds.
 * What a plant makes of a finding for its verdict does not change physics, so it counts even as a note.
 *
 * <p>Source: the terms of the estimate itself; that it errs under just these faults was measured on simulated tightenings.
 */
final class ClampLoadPremises {
    private static final String EVERY_DEGREE = "every recorded degree to have stretched the bolt";

    private ClampLoadPremises() {}

    /**
     * Why findings allow no estimate.
     *
     * @param findings what was found, gravest first
     * @param end how far into yield the curve ends by its gradient
     * @return the reason in words; empty where every premise stands
     */
    static Optional<String> refuted(List<Finding> findings, EndState end) {
        return findings.stream()
                .map(Finding::code)
                .filter(code -> !premise(code, end).isEmpty())
                .findFirst()
                .map(code -> code.title() + " was found, and an estimate takes " + premise(code, end));
    }

    /** Torque that lags and yet rises elastically to the end was lost on the way: then a part of the turn stretched nothing. */
    private static String premise(FindingCode code, EndState end) {
        return switch (code) {
            case WRONG_PARTS, SOFT_SEATING -> "bolt and parts to be those specified";
            case ALREADY_TIGHT -> "the bolt to have been loose at the start";
            case CROSS_THREADED -> "the torque to have clamped";
            case STRIPPING -> "the thread to hold";
            case ANGLE_SLIP, ANGLE_JUMP, TORQUE_DROP -> EVERY_DEGREE;
            case ONSET_DISAGREES -> end == EndState.ELASTIC ? EVERY_DEGREE : "";
            case SENSOR_SATURATED, TRUNCATED -> "the whole curve to be recorded";
            case RECORDING_SHIFTED -> "torque and angle to be of the same moments";
            case NOT_SEATED,
                    SNUG_TORQUE_OUTSIDE,
                    TURN_SHORT,
                    TURN_LONG,
                    FINAL_TORQUE_LOW,
                    FINAL_TORQUE_HIGH,
                    TORQUE_RATE_LOW,
                    TORQUE_RATE_HIGH,
                    PREVAILING_TORQUE_HIGH,
                    EARLY_ONSET,
                    LATE_ONSET,
                    OVER_YIELDED,
                    WEAK_BOLT,
                    HIGH_FRICTION,
                    LOW_FRICTION,
                    RUNDOWN_OUTSIDE,
                    STICK_SLIP,
                    TOOL_WIND_UP,
                    DUPLICATED_RECORDING,
                    REPEATED_ATTEMPT,
                    NO_ELASTIC_LINE,
                    TOO_FEW_SAMPLES,
                    JUDGING_FAILED,
                    FEATURE_MISSING -> "";
        };
    }
}
