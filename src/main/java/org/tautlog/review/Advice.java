package org.tautlog.review;

import org.tautlog.joint.window.FindingCode;

/** What to look at first for each finding; common practice of the trade, no source. */
final class Advice {
    private Advice() {}

    static String on(FindingCode code) {
        return switch (code) {
            case NOT_SEATED, RUNDOWN_OUTSIDE, SOFT_SEATING ->
                "Hold the engine; look for dirt, a burr or a missing or tilted part in the stack before anything is turned again.";
            case SNUG_TORQUE_OUTSIDE ->
                "Check the snug stage: its programmed torque, the speed before the switch-over and the"
                        + " transducer's last calibration.";
            case TURN_SHORT ->
                "Hold the engine; find why the tool stopped early (operator, stall, supply) before a new bolt is"
                        + " fitted.";
            case TURN_LONG, OVER_YIELDED ->
                "Hold the engine; the bolt may be stretched for good and is replaced unless the"
                        + " specification allows its use.";
            case FINAL_TORQUE_LOW, LOW_FRICTION ->
                "Check lubricant and bolt lot first, then the transducer: low friction and a"
                        + " low reading look alike in one trace and differ across spindles.";
            case FINAL_TORQUE_HIGH, HIGH_FRICTION ->
                "Look for dry or wrongly coated bolts of the same lot, then check the"
                        + " transducer against a reference.";
            case TORQUE_RATE_LOW, TORQUE_RATE_HIGH ->
                "See in the charts whether one spindle, one lot or all moved: a spindle's"
                        + " own shift is the tool's, a common one the parts'.";
            case PREVAILING_TORQUE_HIGH, CROSS_THREADED ->
                "Hold the engine; look at the thread of block and bolt before the bolt" + " is turned any further.";
            case EARLY_ONSET, WEAK_BOLT, WRONG_PARTS, LATE_ONSET ->
                "Check bolt marking, length and lot on this engine, then the"
                        + " other engines with bolts of that lot.";
            case ONSET_DISAGREES ->
                "Look at the trace beside its elastic line before the onset is believed: torque that is lost at once or"
                        + " wanders is no yield.";
            case STRIPPING ->
                "Hold the engine; the thread of the block is suspect and cannot be judged by torque again.";
            case ALREADY_TIGHT, REPEATED_ATTEMPT ->
                "Find out who tightened before and to what; the first attempt's record counts,"
                        + " a later good one does not replace it.";
            case STICK_SLIP, TORQUE_DROP ->
                "Check lubricant and under-head face; look whether the same spindle shows it on" + " several engines.";
            case ANGLE_SLIP, ANGLE_JUMP, TOOL_WIND_UP ->
                "Check socket, drive and encoder of this spindle; every angle it reported since is in doubt.";
            case TRUNCATED, TOO_FEW_SAMPLES, NO_ELASTIC_LINE, FEATURE_MISSING ->
                "Fetch the full recording from the station if it"
                        + " still holds it; without it the tightening cannot be judged.";
            case SENSOR_SATURATED ->
                "Take the spindle's transducer out for calibration; its torques at the limit are not"
                        + " measurements.";
            case JUDGING_FAILED ->
                "Judge the tightening by hand, and send its log with the finding's words to whoever keeps this program.";
            case RECORDING_SHIFTED ->
                "Check how this station records and exports: torque and angle of one sample must be of one moment.";
            case DUPLICATED_RECORDING ->
                "Find out which engine the recording is of; the other one has none and is not judged.";
        };
    }
}
