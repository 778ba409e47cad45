package org.tautlog.judge;

import org.tautlog.joint.window.FindingCode;

/** Whether the recording bears a judgement. */
final class DataCheck {
    /** Share of the snug torque at which a recording that begins so lacks its start. */
    private static final double BEGINS_LOADED = 0.9;

    private DataCheck() {}

    static void check(Sheet sheet) {
        var signature = sheet.signature();
        var marks = signature.marks();
        var snug = signature.snug().angleDeg();
        var turn = signature.end().turnDeg();
        var limits = sheet.window().turnDeg();
        double least =
                limits.hasLow() ? limits.low() : sheet.specification().method().turnDeg();
        double snugNm = sheet.specification().method().snugTorqueNm();
        if (!marks.noiseNm().isFound()) {
            sheet.add(
                    FindingCode.TOO_FEW_SAMPLES,
                    (double) signature.samples(),
                    null,
                    "samples",
                    "%s",
                    marks.noiseNm().whyMissing());
            return;
        }
        if (marks.endsRunning() && !(turn.isFound() && turn.number() >= least)) {
            if (snug.isFound()) {
                sheet.add(
                        FindingCode.TRUNCATED,
                        turn.number(),
                        least,
                        "deg",
                        "the recording ends at %.1f N·m, %.1f deg past the snug point, with the tool still turning; whether"
                                + " the turn of %.1f deg was reached cannot be told",
                        signature.end().torqueNm().number(),
                        turn.number(),
                        least);
            } else {
                sheet.add(
                        FindingCode.TRUNCATED,
                        signature.end().torqueNm().number(),
                        snugNm,
                        "N·m",
                        "the recording ends at %.1f N·m with the tool still turning, before the snug torque of %.1f N·m",
                        signature.end().torqueNm().number(),
                        snugNm);
            }
        } else if (marks.firstTorqueNm().number() > BEGINS_LOADED * snugNm && snug.isFound()) {
            sheet.add(
                    FindingCode.TRUNCATED,
                    marks.firstTorqueNm().number(),
                    BEGINS_LOADED * snugNm,
                    "N·m",
                    "the recording begins at %.1f N·m already; how the snug torque of %.1f N·m was reached is not recorded",
                    marks.firstTorqueNm().number(),
                    snugNm);
        }
        int leastSamples = sheet.faults().leastTurnSamples();
        if (snug.isFound() && marks.turnSamples() < leastSamples && !sheet.has(FindingCode.TRUNCATED)) {
            sheet.add(
                    FindingCode.TOO_FEW_SAMPLES,
                    (double) marks.turnSamples(),
                    (double) leastSamples,
                    "samples",
                    "%d samples lie between the snug point and the stop; at least %d are needed",
                    marks.turnSamples(),
                    leastSamples);
        }
        if (marks.saturatedSamples() >= sheet.faults().saturatedSamples()) {
            sheet.add(
                    FindingCode.SENSOR_SATURATED,
                    (double) marks.saturatedSamples(),
                    (double) sheet.faults().saturatedSamples(),
                    "samples",
                    "%d turning samples in a row stand at %.3f N·m, to a digit: the torque sensor is at its limit",
                    marks.saturatedSamples(),
                    signature.end().peakTorqueNm().number());
        }
        if (marks.duplicated()) {
            sheet.add(
                    FindingCode.DUPLICATED_RECORDING,
                    null,
                    null,
                    "",
                    "the recording holds the same samples twice; the first copy was read");
        }
        if (sheet.identity().attempt() > 1) {
            sheet.add(
                    FindingCode.REPEATED_ATTEMPT,
                    (double) sheet.identity().attempt(),
                    1.0,
                    "",
                    "this is attempt %d on the same bolt position",
                    sheet.identity().attempt());
        }
    }
}
