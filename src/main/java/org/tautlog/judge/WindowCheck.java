package org.tautlog.judge;

import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.signature.Feature;

/** Every limit of the window, each held against its feature; a feature that a limit needs and the curve lacks is said. */
final class WindowCheck {
    /** Turn without the snug torque after which it was not held, deg; a pause or a slip of the tool is left out. */
    private static final double LONGEST_LOST_DEG = 10;

    /**
     * Share of a band from which on a reading that leaves so much open is too coarse for it. Common practice, no source: a
     * measurement resolves a tenth of its tolerance.
     */
    private static final double COARSE_SHARE = 0.1;

    private WindowCheck() {}

    static void check(Sheet sheet) {
        var signature = sheet.signature();
        var window = sheet.window();
        boolean truncated = sheet.has(FindingCode.TRUNCATED);
        boolean saturated = sheet.has(FindingCode.SENSOR_SATURATED);
        if (sheet.has(FindingCode.TOO_FEW_SAMPLES)
                && !signature.marks().noiseNm().isFound()) {
            return;
        }
        if (!signature.snug().angleDeg().isFound()) {
            if (!truncated) {
                sheet.add(
                        FindingCode.NOT_SEATED,
                        signature.end().peakTorqueNm().number(),
                        sheet.specification().method().snugTorqueNm(),
                        "N·m",
                        "%s; the highest torque is %.2f N·m",
                        signature.snug().angleDeg().whyMissing(),
                        signature.end().peakTorqueNm().number());
            }
            return;
        }
        snugLost(sheet);
        hold(
                sheet,
                "torque at the end of the snug stage",
                signature.snug().torqueNm(),
                window.snugTorqueNm(),
                FindingCode.SNUG_TORQUE_OUTSIDE,
                FindingCode.SNUG_TORQUE_OUTSIDE,
                "N·m",
                2);
        if (!truncated) {
            hold(
                    sheet,
                    "turn past the snug point",
                    signature.end().turnDeg(),
                    window.turnDeg(),
                    FindingCode.TURN_SHORT,
                    FindingCode.TURN_LONG,
                    "deg",
                    1);
        }
        if (!truncated && !saturated) {
            hold(
                    sheet,
                    "torque where the tool stopped",
                    signature.end().torqueNm(),
                    window.finalTorqueNm(),
                    FindingCode.FINAL_TORQUE_LOW,
                    FindingCode.FINAL_TORQUE_HIGH,
                    "N·m",
                    2);
        }
        hold(
                sheet,
                "prevailing torque",
                signature.prevailingTorqueNm(),
                window.prevailingTorqueNm(),
                null,
                FindingCode.PREVAILING_TORQUE_HIGH,
                "N·m",
                2);
        elastic(sheet, truncated, saturated);
        hold(
                sheet,
                "turn from the first sample to the snug point",
                signature.marks().rundownDeg(),
                sheet.faults().rundownDeg(),
                FindingCode.RUNDOWN_OUTSIDE,
                FindingCode.RUNDOWN_OUTSIDE,
                "deg",
                0);
    }

    /** A burr in the rundown passes for the seated joint: the torque is reached and gone again. */
    private static void snugLost(Sheet sheet) {
        double lost = sheet.signature().marks().snugLostDeg().number();
        if (lost > LONGEST_LOST_DEG) {
            double snugNm = sheet.specification().method().snugTorqueNm();
            sheet.add(
                    FindingCode.NOT_SEATED,
                    lost,
                    LONGEST_LOST_DEG,
                    "deg",
                    "after the snug torque of %.1f N·m was reached it was lost again over %.1f deg of turning: the parts"
                            + " were not seated",
                    snugNm,
                    lost);
        }
    }

    private static void elastic(Sheet sheet, boolean truncated, boolean saturated) {
        var rate = sheet.signature().elastic().torqueRateNmPerDeg();
        if (!rate.isFound()) {
            sheet.add(FindingCode.NO_ELASTIC_LINE, null, null, "", "no elastic line: %s", rate.whyMissing());
            return;
        }
        hold(
                sheet,
                "slope of the elastic line",
                rate,
                sheet.window().torqueRateNmPerDeg(),
                FindingCode.TORQUE_RATE_LOW,
                FindingCode.TORQUE_RATE_HIGH,
                "N·m/deg",
                4);
        if (saturated) {
            return;
        }
        onset(sheet);
        double least = sheet.window().onset().leastFinalGradientRatio();
        var last = sheet.signature().onset().finalGradientRatio();
        if (!truncated && least > 0 && last.isFound() && last.number() < least) {
            sheet.add(
                    FindingCode.OVER_YIELDED,
                    last.number(),
                    least,
                    "",
                    "at the stop the gradient is %." + atLeast(least).decimals(last.number(), 2)
                            + "f of the torque rate; the window asks for at least %.2f",
                    last.number(),
                    least);
        }
    }

    private static Band atLeast(double least) {
        return new Band(least, Double.POSITIVE_INFINITY);
    }

    private static void onset(Sheet sheet) {
        var onset = sheet.signature().onset().angleDeg();
        if (!onset.isFound()) {
            return;
        }
        var limits = sheet.window().onset();
        double pastSnug = onset.number() - sheet.signature().snug().angleDeg().number();
        hold(
                sheet,
                "turn from the snug point to the yield onset",
                Feature.of(pastSnug, onset.standardUncertainty()),
                limits.pastSnugDeg(),
                FindingCode.EARLY_ONSET,
                FindingCode.LATE_ONSET,
                "deg",
                1);
        var origin = sheet.signature().elastic().originDeg();
        if (origin.isFound() && !sheet.has(FindingCode.EARLY_ONSET) && !sheet.has(FindingCode.LATE_ONSET)) {
            hold(
                    sheet,
                    "turn from the elastic origin to the yield onset",
                    Feature.of(onset.number() - origin.number(), onset.standardUncertainty()),
                    limits.pastOriginDeg(),
                    FindingCode.EARLY_ONSET,
                    FindingCode.LATE_ONSET,
                    "deg",
                    1);
        }
    }

    private static void hold(
            Sheet sheet,
            String name,
            Feature feature,
            Band band,
            @Nullable FindingCode low,
            FindingCode high,
            String unit,
            int digits) {
        if (!band.hasLow() && !band.hasHigh()) {
            return;
        }
        if (feature.isFound() && cannotTell(feature, band)) {
            sheet.add(
                    FindingCode.TOO_FEW_SAMPLES,
                    feature.number(),
                    feature.number() < band.low() ? band.low() : band.high(),
                    unit,
                    "%s is %." + digits + "f %s, give or take %." + digits
                            + "f %s that the samples leave open; whether it" + " keeps the window's %s cannot be told",
                    name,
                    feature.number(),
                    unit,
                    reach(feature),
                    unit,
                    Sheet.words(band, unit));
            return;
        }
        if (!feature.isFound()) {
            sheet.add(
                    FindingCode.FEATURE_MISSING,
                    null,
                    null,
                    unit,
                    "%s is not known, the window asks for %s: %s",
                    name,
                    Sheet.words(band, unit),
                    feature.whyMissing());
            return;
        }
        double value = feature.number();
        boolean below = value < band.low();
        var code = below ? low : high;
        if (band.contains(value) || code == null) {
            return;
        }
        sheet.add(
                code,
                value,
                below ? band.low() : band.high(),
                unit,
                "%s is %." + band.decimals(value, digits) + "f %s; the window asks for %s",
                name,
                value,
                unit,
                Sheet.words(band, unit));
    }

    /** Half the width of the even distribution that has the feature's standard uncertainty. */
    private static double reach(Feature feature) {
        return Math.sqrt(3) * feature.standardUncertainty();
    }

    /**
     * Whether a limit lies within reach of a feature that is known too coarsely for its band. A finer reading is taken at
     * its word: next to a limit the recorded value decides.
     */
    private static boolean cannotTell(Feature feature, Band band) {
        double reach = reach(feature);
        double width = band.hasLow() && band.hasHigh()
                ? band.high() - band.low()
                : Math.abs(band.hasLow() ? band.low() : band.high());
        if (reach <= COARSE_SHARE * width) {
            return false;
        }
        return within(feature.number(), reach, band.low()) || within(feature.number(), reach, band.high());
    }

    private static boolean within(double value, double reach, double limit) {
        return Math.abs(value - limit) < reach;
    }
}
