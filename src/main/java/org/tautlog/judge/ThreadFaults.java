package org.tautlog.judge;

import org.tautlog.joint.window.FindingCode;
import org.tautlog.signature.Feature;

/** Threads that jam or give way. */
final class ThreadFaults {
    /** Spread of the free turning's torque over the snug torque from which on it is irregular. */
    private static final double IRREGULAR_SHARE = 0.05;

    /** Gradient over torque rate at and below which the torque stands still. Source: common practice, 10 %. */
    private static final double STANDING_RATIO = 0.10;

    private ThreadFaults() {}

    static void check(Sheet sheet) {
        if (!sheet.signature().snug().angleDeg().isFound()) {
            crossThreaded(sheet);
            return;
        }
        crossThreaded(sheet);
        if (!sheet.has(FindingCode.NOT_SEATED)
                && !sheet.has(FindingCode.CROSS_THREADED)
                && !sheet.has(FindingCode.TRUNCATED)
                && !sheet.has(FindingCode.SENSOR_SATURATED)) {
            stripping(sheet);
        }
    }

    /**
     * Cues: high torque in the free turning; and irregular or a rundown too short. A torque that is high and even is a
     * tight thread, not a crossed one. Source: common practice; the numbers are ours.
     */
    private static void crossThreaded(Sheet sheet) {
        var marks = sheet.signature().marks();
        double snugNm = sheet.specification().method().snugTorqueNm();
        double limit = sheet.faults().rundownTorqueShare() * snugNm;
        boolean high = marks.rundownPeakNm().isFound() && marks.rundownPeakNm().number() > limit;
        boolean irregular =
                marks.rundownSpreadNm().isFound() && marks.rundownSpreadNm().number() > IRREGULAR_SHARE * snugNm;
        boolean early = marks.rundownDeg().isFound()
                && marks.rundownDeg().number() < sheet.faults().rundownDeg().low();
        if (high && (irregular || early) && !sheet.has(FindingCode.ALREADY_TIGHT)) {
            sheet.add(
                    FindingCode.CROSS_THREADED,
                    marks.rundownPeakNm().number(),
                    limit,
                    "N·m",
                    "before the parts can touch the torque reaches %.1f N·m and strays by %.1f N·m; usual is at most %.1f"
                            + " N·m: the thread may be crossed",
                    marks.rundownPeakNm().number(),
                    marks.rundownSpreadNm().number(),
                    limit);
        }
    }

    /**
     * Cues: the torque is far below what the joint usually bears; and it falls while turning, or stands still at a torque
     * that no bolt of this kind yields at. Source: common practice: slope of at most 10 % below 60 % of the usual onset
     * torque; peak below 70 to 80 % of usual.
     */
    private static void stripping(Sheet sheet) {
        var end = sheet.signature().end();
        var usual = sheet.usualOnsetNm();
        double peak = end.peakTorqueNm().number();
        double fall = 1 - end.torqueNm().number() / peak;
        boolean low = sheet.has(FindingCode.FINAL_TORQUE_LOW)
                || (usual.isPresent() && peak < (1 - sheet.faults().causeShare()) * usual.getAsDouble());
        boolean falls = fall > sheet.faults().fallShare()
                && end.torqueNm().number()
                        < peak - 8 * sheet.signature().marks().noiseNm().number();
        Feature least = sheet.signature().onset().minGradientRatio();
        boolean stands = least.isFound()
                && least.number() <= STANDING_RATIO
                && usual.isPresent()
                && peak < sheet.faults().strippedTorqueShare() * usual.getAsDouble();
        if (low && (falls || stands) && !sheet.has(FindingCode.ALREADY_TIGHT)) {
            sheet.add(
                    FindingCode.STRIPPING,
                    end.torqueNm().number(),
                    falls ? (1 - sheet.faults().fallShare()) * peak : usual.orElse(peak),
                    "N·m",
                    "the torque reached %.1f N·m only and was %.1f N·m at the stop while the tool turned on: a thread gives"
                            + " way",
                    peak,
                    end.torqueNm().number());
        }
    }
}
