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
    /** Thinnest layer that a rundown shows, as turn: a quarter turn is 0.4 mm at a pitch of 1.5 mm. */
    private static final double LEAST_LAYER_DEG = 90;

    /** Gradient at the snug point over the torque rate below which the parts still draw together. */
    private static final double STILL_SEATING_RATIO = 0.8;

    private Causes() {}

    static void check(Sheet sheet) {
        boolean explained = sheet.has(FindingCode.NOT_SEATED)
                || sheet.has(FindingCode.STRIPPING)
                || sheet.has(FindingCode.CROSS_THREADED)
                || sheet.has(FindingCode.ALREADY_TIGHT)
                || sheet.has(FindingCode.ANGLE_SLIP)
                || sheet.has(FindingCode.SENSOR_SATURATED)
                || !sheet.signature().elastic().torqueRateNmPerDeg().isFound();
        if (explained) {
            return;
        }
        OnsetAgreement.check(sheet);
        wrongParts(sheet);
        if (!sheet.has(FindingCode.WRONG_PARTS)) {
            weakBolt(sheet);
            friction(sheet);
        }
    }

    /**
     * Two cues of a stack that is not the one specified: rundown and slope, both off; a long seating zone and a snug point
     * still within it; or slope and onset moved against each other.
     */
    private static void wrongParts(Sheet sheet) {
        double rate = sheet.signature().elastic().torqueRateNmPerDeg().number();
        double usual = sheet.usualRateNmPerDeg().orElse(rate);
        boolean rateOutside = sheet.has(FindingCode.TORQUE_RATE_HIGH) || sheet.has(FindingCode.TORQUE_RATE_LOW);
        boolean rateOff =
                rateOutside || Math.abs(rate / usual - 1) > 2 * sheet.faults().causeShare();
        boolean onsetOff = sheet.has(FindingCode.EARLY_ONSET) || sheet.has(FindingCode.LATE_ONSET);
        boolean layer = rundownOffBy(sheet) > LEAST_LAYER_DEG && (rateOff || onsetOff);
        if (layer || (rundownOffBy(sheet) > 0 && rateOutside)) {
            wrongParts(sheet, "the turn to the snug point is off by %.0f deg and", rundownOffBy(sheet), rate, usual);
            return;
        }
        var ratio = sheet.signature().marks().snugGradientRatio();
        boolean stillSeating = ratio.isFound() && ratio.number() < STILL_SEATING_RATIO;
        if (sheet.has(FindingCode.SOFT_SEATING) && ratio.isFound() && (stillSeating || rundownOffBy(sheet) > 0)) {
            wrongParts(
                    sheet,
                    "the parts draw together late, at the snug point the gradient is %.2f of the torque rate, and",
                    ratio.number(),
                    rate,
                    usual);
            return;
        }
        boolean stiff = sheet.has(FindingCode.TORQUE_RATE_HIGH) && sheet.has(FindingCode.EARLY_ONSET);
        boolean soft = sheet.has(FindingCode.TORQUE_RATE_LOW) && sheet.has(FindingCode.LATE_ONSET);
        if ((stiff || soft) && onsetTorqueUsual(sheet)) {
            wrongParts(
                    sheet,
                    "the yield onset comes at the usual torque of %.1f N·m at an unusual angle and",
                    sheet.signature().onset().torqueNm().number(),
                    rate,
                    usual);
        }
    }

    private static void wrongParts(Sheet sheet, String cue, double number, double rate, double usual) {
        sheet.add(
                FindingCode.WRONG_PARTS,
                rate,
                usual,
                "N·m/deg",
                cue
                        + " the slope of the elastic line is %.4f N·m/deg, usual %.4f: bolt or clamped parts are not the ones"
                        + " specified",
                number,
                rate,
                usual);
    }

    /** How far the turn to the snug point lies outside its limits. */
    private static double rundownOffBy(Sheet sheet) {
        var rundown = sheet.signature().marks().rundownDeg();
        var band = sheet.faults().rundownDeg();
        return rundown.isFound() ? Math.max(band.low() - rundown.number(), rundown.number() - band.high()) : 0;
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
