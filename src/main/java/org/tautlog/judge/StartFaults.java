package org.tautlog.judge;

import org.tautlog.joint.window.FindingCode;

/** Faults that show before the snug point. */
final class StartFaults {
    /** Share of the snug torque below which a recording begins free. */
    private static final double FREE_SHARE = 0.5;

    /** Slope to the snug point over the torque rate from which on the drive alone winds up. */
    private static final double WIND_UP_RATIO = 1.3;

    private StartFaults() {}

    static void check(Sheet sheet) {
        var marks = sheet.signature().marks();
        if (!marks.rundownDeg().isFound()) {
            return;
        }
        alreadyTight(sheet);
        var seating = marks.seatingDeg();
        if (seating.isFound() && seating.number() > sheet.faults().seatingDeg()) {
            sheet.add(
                    FindingCode.SOFT_SEATING,
                    seating.number(),
                    sheet.faults().seatingDeg(),
                    "deg",
                    "the parts draw together over %.0f deg; usual is at most %.0f deg",
                    seating.number(),
                    sheet.faults().seatingDeg());
        }
    }

    /**
     * Cues: the snug torque is there within a few degrees; and either no free turning was seen and the recording began
     * free of load, or the torque rose faster than the joint can. Source: common practice, 5 to 30 deg.
     */
    private static void alreadyTight(Sheet sheet) {
        var marks = sheet.signature().marks();
        double turned = marks.rundownDeg().number();
        double snugNm = sheet.specification().method().snugTorqueNm();
        double limit = sheet.faults().alreadyTightDeg();
        var rate = sheet.usualRateNmPerDeg();
        boolean short1 = turned < limit;
        boolean beganFree = marks.firstTorqueNm().number() < FREE_SHARE * snugNm;
        boolean steep = rate.isPresent()
                && marks.riseToSnugNmPerDeg().isFound()
                && marks.riseToSnugNmPerDeg().number() > WIND_UP_RATIO * rate.getAsDouble();
        if (short1
                && beganFree
                && (steep || !sheet.signature().prevailingTorqueNm().isFound())) {
            sheet.add(
                    FindingCode.ALREADY_TIGHT,
                    turned,
                    limit,
                    "deg",
                    "the snug torque of %.1f N·m was there %.1f deg after the start, at %.2f N·m/deg; a loose bolt needs"
                            + " more than %.0f deg: it was tight before",
                    snugNm,
                    turned,
                    marks.riseToSnugNmPerDeg().number(),
                    limit);
        }
    }
}
