package org.tautlog.judge;

import org.tautlog.joint.window.FindingCode;
import org.tautlog.trace.Curve;

/**
 * Torque and angle that were not recorded at the same moments. A tool that stops lets go and its drive unwinds, so the torque
 * falls as the angle runs back. A stop speaks against that where
 *
 * <pre>
 * the torque is still at 0.9 of its highest while the angle has run back half of its way; or
 * the torque has fallen below half of its highest while the angle still went on, over 3 samples and 1 deg at least
 * </pre>
 *
 * Every stop under load must speak so, in the pause and at the end. The second alone, at the end, may be a bolt that broke: then
 * it takes two stops. A recording without any angle that runs back tells nothing; of one that shows it at the end alone only
 * torque that is too late is told.
 *
 * <p>Source: a twisted drive is a spring; the shares are ours.
 */
final class OutOfStep {
    private static final double STILL_THERE = 0.9;
    private static final double GONE = 0.5;

    /** Torque over the snug torque from which on a stop is one under load. */
    private static final double LOADED = 0.5;

    /** Least and most by which the angle runs back at a stop, deg; beyond, the tool was reversed or the angle leapt. */
    private static final double LEAST_BACK_DEG = 1;

    private static final double MOST_BACK_DEG = 20;

    /** Turn before a stop in which its highest torque is looked for, deg. */
    private static final double BEFORE_DEG = 45;

    private static final int LEAST_GONE_SAMPLES = 3;
    private static final double LEAST_GONE_DEG = 1;

    private final Curve curve;
    private final double loadedNm;
    private int stops;
    private int tooLate;
    private int tooEarly;
    private double atNm;
    private double backDeg;

    private OutOfStep(Curve curve, double loadedNm) {
        this.curve = curve;
        this.loadedNm = loadedNm;
    }

    static void check(Sheet sheet, Curve curve) {
        var seen = new OutOfStep(curve, LOADED * sheet.specification().method().snugTorqueNm());
        seen.walk();
        if (seen.stops > seen.tooLate + seen.tooEarly || (seen.tooLate == 0 && seen.tooEarly < 2)) {
            return;
        }
        if (seen.tooLate > 0) {
            sheet.add(
                    FindingCode.RECORDING_SHIFTED,
                    seen.backDeg,
                    LEAST_BACK_DEG,
                    "deg",
                    "where the tool stopped the angle has run back %.1f deg and the torque still stands at %.1f N·m: torque and"
                            + " angle are not of the same moments",
                    seen.backDeg,
                    seen.atNm);
        } else {
            sheet.add(
                    FindingCode.RECORDING_SHIFTED,
                    seen.atNm,
                    null,
                    "N·m",
                    "before both stops the torque is gone, down to %.1f N·m, while the angle still goes on: torque and angle"
                            + " are not of the same moments",
                    seen.atNm);
        }
    }

    private void walk() {
        int top = 0;
        int lowest = 0;
        for (int i = 1; i <= curve.size(); i++) {
            if (i == curve.size() || curve.angleDeg(i) > curve.angleDeg(top)) {
                double back = curve.angleDeg(top) - curve.angleDeg(lowest);
                if (back >= LEAST_BACK_DEG && back <= MOST_BACK_DEG) {
                    stop(top, lowest);
                }
                top = i;
                lowest = i;
            } else if (curve.angleDeg(i) < curve.angleDeg(lowest)) {
                lowest = i;
            }
        }
    }

    private void stop(int top, int lowest) {
        double stopDeg = curve.angleDeg(top);
        int from = top;
        while (from > 0 && curve.angleDeg(from - 1) > stopDeg - BEFORE_DEG) {
            from--;
        }
        int highest = from;
        for (int i = from; i <= lowest; i++) {
            highest = curve.torqueNm(i) > curve.torqueNm(highest) ? i : highest;
        }
        double full = curve.torqueNm(highest);
        if (full < loadedNm) {
            return;
        }
        stops++;
        int half = top;
        while (stopDeg - curve.angleDeg(half) < (stopDeg - curve.angleDeg(lowest)) / 2) {
            half++;
        }
        int lastThere = top;
        while (lastThere > from && curve.torqueNm(lastThere) < GONE * full) {
            lastThere--;
        }
        if (curve.torqueNm(half) >= STILL_THERE * full) {
            tooLate++;
            atNm = curve.torqueNm(half);
            backDeg = stopDeg - curve.angleDeg(half);
        } else if (top - lastThere >= LEAST_GONE_SAMPLES && stopDeg - curve.angleDeg(lastThere + 1) >= LEAST_GONE_DEG) {
            tooEarly++;
            atNm = curve.torqueNm(top);
        }
    }
}
