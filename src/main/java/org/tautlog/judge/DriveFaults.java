package org.tautlog.judge;

import org.tautlog.joint.window.FindingCode;

/** Faults of drive, socket and encoder, and torque that saws or falls. */
final class DriveFaults {
    /** A fall below this many standard deviations of the noise is no fall. */
    private static final double NOISE_FACTOR = 8;

    /** A fall is more than stick-slip from this many times the saw on. */
    private static final double SAW_FACTOR = 2;

    /** A spring-back beyond this is the tool reversed, not the drive unwinding, deg. */
    private static final double REVERSED_DEG = 90;

    private DriveFaults() {}

    static void check(Sheet sheet) {
        var marks = sheet.signature().marks();
        var rule = sheet.faults();
        boolean jerksOrFalls = sheet.has(FindingCode.NOT_SEATED) || sheet.has(FindingCode.CROSS_THREADED);
        if (!jerksOrFalls
                && marks.angleSlipDeg().isFound()
                && marks.angleSlipDeg().number() > rule.angleSlipDeg()) {
            sheet.add(
                    FindingCode.ANGLE_SLIP,
                    marks.angleSlipDeg().number(),
                    rule.angleSlipDeg(),
                    "deg",
                    "the angle went on %.1f deg from %.1f deg on without the torque that belongs to it, then the torque rose"
                            + " as before; drive or socket slipped, or the bolt's other end turned along",
                    marks.angleSlipDeg().number(),
                    marks.angleSlipAtDeg().number());
        }
        if (marks.angleJumpDeg().isFound()
                && marks.angleJumpDeg().number() > rule.angleJumpDeg()
                && !sheet.has(FindingCode.ANGLE_SLIP)) {
            sheet.add(
                    FindingCode.ANGLE_JUMP,
                    marks.angleJumpDeg().number(),
                    rule.angleJumpDeg(),
                    "deg",
                    "the recorded angle jumps or runs back by %.1f deg where the tool was turning on",
                    marks.angleJumpDeg().number());
        }
        double back = marks.springBackDeg().number();
        if (back > rule.springBackDeg() && back < REVERSED_DEG) {
            sheet.add(
                    FindingCode.TOOL_WIND_UP,
                    back,
                    rule.springBackDeg(),
                    "deg",
                    "the angle runs back %.1f deg at the stop; usual is at most %.1f deg: the drive twists",
                    back,
                    rule.springBackDeg());
        }
        stickSlip(sheet);
        if (!jerksOrFalls) {
            drop(sheet);
        }
    }

    /** Source: common practice, peak to peak above 10 % of the torque. */
    private static void stickSlip(Sheet sheet) {
        var saw = sheet.signature().marks().stickSlipNm();
        double torque = (sheet.specification().method().snugTorqueNm()
                        + sheet.signature().end().torqueNm().number())
                / 2;
        double limit = sheet.faults().stickSlipShare() * torque;
        if (saw.isFound() && saw.number() > limit && !sheet.has(FindingCode.ANGLE_SLIP)) {
            sheet.add(
                    FindingCode.STICK_SLIP,
                    saw.number(),
                    limit,
                    "N·m",
                    "past the snug point the torque saws by %.2f N·m; usual is at most %.2f N·m",
                    saw.number(),
                    limit);
        }
    }

    private static void drop(Sheet sheet) {
        var marks = sheet.signature().marks();
        if (!marks.torqueDropNm().isFound()
                || !marks.torqueDropAtDeg().isFound()
                || sheet.has(FindingCode.ANGLE_SLIP)) {
            return;
        }
        double past = marks.torqueDropAtDeg().number()
                - sheet.signature().snug().angleDeg().number();
        double torque = Math.min(
                sheet.signature().end().peakTorqueNm().number(),
                sheet.specification().method().snugTorqueNm()
                        + past * sheet.usualRateNmPerDeg().orElse(0));
        double limit = Math.max(
                sheet.faults().torqueDropShare() * torque,
                NOISE_FACTOR * marks.noiseNm().number());
        boolean saws = sheet.has(FindingCode.STICK_SLIP)
                && marks.torqueDropNm().number()
                        < SAW_FACTOR * marks.stickSlipNm().number();
        if (marks.torqueDropNm().number() > limit && !saws) {
            sheet.add(
                    FindingCode.TORQUE_DROP,
                    marks.torqueDropNm().number(),
                    limit,
                    "N·m",
                    "%.1f deg past the snug point the torque fell by %.1f N·m while turning; usual is at most %.1f N·m",
                    past,
                    marks.torqueDropNm().number(),
                    limit);
        }
    }
}
