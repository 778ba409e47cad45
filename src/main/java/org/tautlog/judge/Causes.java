package org.tautlog.judge;

import org.tautlog.joint.window.FindingCode;
import org.tautlog.signature.EndState;

/**
 * Causes that need two cues. Friction scales torque rate, onset torque and final torque and hardly moves the onset angle;
 * bolt strength moves onset torque and onset angle together and leaves the rate; stiffness moves rate and onset angle
 * against each other and leaves the onset torque.
 *
 * <p>Source: the torque-tension relation of a bolted joint; which cue counts from where on is ours.
 */
final class Causes {
    private Causes() {}

    static void check(Sheet sheet) {
        boolean explained = sheet.has(FindingCode.STRIPPING)
                || sheet.has(FindingCode.CROSS_THREADED)
                || sheet.has(FindingCode.ALREADY_TIGHT)
                || sheet.has(FindingCode.ANGLE_SLIP)
                || sheet.has(FindingCode.SENSOR_SATURATED)
                || !sheet.signature().elastic().torqueRateNmPerDeg().isFound();
        if (explained) {
            return;
        }
        wrongParts(sheet);
        if (!sheet.has(FindingCode.WRONG_PARTS)) {
            weakBolt(sheet);
            friction(sheet);
        }
    }

    private static void wrongParts(Sheet sheet) {
        var rate = sheet.signature().elastic().torqueRateNmPerDeg().number();
        boolean stiff = sheet.has(FindingCode.TORQUE_RATE_HIGH) && sheet.has(FindingCode.EARLY_ONSET);
        boolean soft = sheet.has(FindingCode.TORQUE_RATE_LOW) && sheet.has(FindingCode.LATE_ONSET);
        boolean against = (stiff || soft) && onsetTorqueUsual(sheet);
        boolean rateOff = sheet.has(FindingCode.TORQUE_RATE_HIGH) || sheet.has(FindingCode.TORQUE_RATE_LOW);
        boolean onsetOff = sheet.has(FindingCode.EARLY_ONSET) || sheet.has(FindingCode.LATE_ONSET);
        boolean seatsSoft = sheet.has(FindingCode.SOFT_SEATING) && sheet.has(FindingCode.TORQUE_RATE_LOW);
        boolean stack = sheet.has(FindingCode.RUNDOWN_OUTSIDE) && (rateOff || onsetOff);
        if (!against && !seatsSoft && !stack) {
            return;
        }
        var cue = seatsSoft
                ? "the parts draw together late and the slope of the elastic line is low"
                : stack
                        ? "the rundown is outside its limits and the elastic line differs"
                        : "slope of the elastic line and yield onset moved against each other at a usual onset torque";
        double shown = sheet.usualRateNmPerDeg().orElse(rate);
        sheet.add(
                FindingCode.WRONG_PARTS,
                rate,
                shown,
                "N·m/deg",
                "%s (slope %.4f N·m/deg, usual %.4f): bolt or clamped parts are not the ones specified",
                cue,
                rate,
                shown);
    }

    private static boolean onsetTorqueUsual(Sheet sheet) {
        var torque = sheet.signature().onset().torqueNm();
        var usual = sheet.usualOnsetNm();
        return torque.isFound()
                && usual.isPresent()
                && Math.abs(torque.number() / usual.getAsDouble() - 1)
                        <= 2 * sheet.faults().causeShare();
    }

    private static void weakBolt(Sheet sheet) {
        var onset = sheet.signature().onset();
        var usual = sheet.usualOnsetNm();
        boolean lowOnset = onset.torqueNm().isFound()
                && usual.isPresent()
                && onset.torqueNm().number() < (1 - sheet.faults().causeShare()) * usual.getAsDouble();
        boolean lowEnd = sheet.has(FindingCode.FINAL_TORQUE_LOW);
        boolean early = sheet.has(FindingCode.EARLY_ONSET);
        boolean plastic =
                onset.endState() == EndState.PLASTIC && onset.angleDeg().isFound();
        boolean rateUsual = !sheet.has(FindingCode.TORQUE_RATE_HIGH) && !sheet.has(FindingCode.TORQUE_RATE_LOW);
        boolean strengthLow = (early && (lowOnset || lowEnd)) || (plastic && lowEnd);
        if (!rateUsual || !strengthLow) {
            return;
        }
        double past =
                onset.angleDeg().number() - sheet.signature().snug().angleDeg().number();
        sheet.add(
                FindingCode.WEAK_BOLT,
                onset.torqueNm().number(),
                usual.orElse(onset.torqueNm().number()),
                "N·m",
                "the elastic zone ends %.1f deg past the snug point at %.1f N·m, usual is at least %.1f N·m, while the slope"
                        + " is as specified: the bolt's strength is low",
                past,
                onset.torqueNm().number(),
                usual.orElse(onset.torqueNm().number()));
    }

    private static void friction(Sheet sheet) {
        boolean turnRight = !sheet.has(FindingCode.TURN_SHORT)
                && !sheet.has(FindingCode.TURN_LONG)
                && !sheet.has(FindingCode.TRUNCATED);
        if (!turnRight) {
            return;
        }
        double rate = sheet.signature().elastic().torqueRateNmPerDeg().number();
        double end = sheet.signature().end().torqueNm().number();
        if (sheet.has(FindingCode.TORQUE_RATE_HIGH) && sheet.has(FindingCode.FINAL_TORQUE_HIGH)) {
            sheet.add(
                    FindingCode.HIGH_FRICTION,
                    rate,
                    sheet.window().torqueRateNmPerDeg().high(),
                    "N·m/deg",
                    "slope of the elastic line %.4f N·m/deg and final torque %.1f N·m are both high at the right turn:"
                            + " friction is high",
                    rate,
                    end);
        }
        if (sheet.has(FindingCode.TORQUE_RATE_LOW)
                && sheet.has(FindingCode.FINAL_TORQUE_LOW)
                && !sheet.has(FindingCode.EARLY_ONSET)) {
            sheet.add(
                    FindingCode.LOW_FRICTION,
                    rate,
                    sheet.window().torqueRateNmPerDeg().low(),
                    "N·m/deg",
                    "slope of the elastic line %.4f N·m/deg and final torque %.1f N·m are both low at the right turn:"
                            + " friction is low",
                    rate,
                    end);
        }
    }
}
