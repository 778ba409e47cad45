package org.tautlog.signature;

import java.util.Locale;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;

/**
 * The snug point: the first upward crossing of the snug torque that holds, interpolated on a line through as many cells
 * as the noise asks for.
 *
 * <p>Source: common practice: first upward crossing that stays above for 2 to 3 deg, linear interpolation.
 */
final class SnugFinder {
    /** Standard uncertainty aimed at when choosing how many cells to draw the line through, deg. */
    private static final double WANTED_DEG = 0.3;

    private static final int FEWEST_CELLS = 2;
    private static final int MOST_CELLS = 40;

    private SnugFinder() {}

    static Feature angle(Cells cells, MovingLine smooth, double noiseNm, TighteningMethod method, ReadingRule rule) {
        double snugNm = method.snugTorqueNm();
        int at = holding(cells, smooth, snugNm, rule.snugHoldDeg());
        if (at < 0) {
            return Feature.missing(String.format(
                    Locale.ROOT,
                    "the torque never reached the snug torque of %.1f N·m and held it for %.1f deg",
                    snugNm,
                    rule.snugHoldDeg()));
        }
        double coarse = coarse(cells, smooth, at, snugNm);
        double slope = Math.max(smooth.slope(at), smooth.slope(Math.max(0, at - 1)));
        if (slope <= 0) {
            return Feature.of(coarse, smooth.spanDeg() / 2);
        }
        double wanted = noiseNm / (WANTED_DEG * slope);
        int n = (int) Math.ceil(Math.min(MOST_CELLS, Math.max(FEWEST_CELLS, wanted * wanted)));
        double fine = n == FEWEST_CELLS
                ? firstPair(cells, snugNm, coarse)
                : refine(cells, coarse, n, snugNm, slope, smooth.spanDeg());
        double uncertainty = noiseNm / (slope * Math.sqrt(n));
        return Math.abs(fine - coarse) <= smooth.spanDeg()
                ? Feature.of(fine, uncertainty)
                : Feature.of(coarse, Math.max(uncertainty, Math.hypot(gap(cells, coarse), smooth.spanDeg()) / 4));
    }

    /** First cell from which the smoothed torque stays at or above the snug torque for the hold angle. */
    private static int holding(Cells cells, MovingLine smooth, double snugNm, double holdDeg) {
        int since = -1;
        for (int i = 0; i < cells.size(); i++) {
            if (smooth.value(i) < snugNm) {
                since = -1;
                continue;
            }
            since = since < 0 ? i : since;
            if (cells.angleDeg(i) - cells.angleDeg(since) >= holdDeg) {
                return since;
            }
        }
        return -1;
    }

    private static double coarse(Cells cells, MovingLine smooth, int at, double snugNm) {
        if (at == 0) {
            return cells.angleDeg(0);
        }
        double below = smooth.value(at - 1);
        double above = smooth.value(at);
        double share = above > below ? (snugNm - below) / (above - below) : 1;
        return cells.angleDeg(at - 1) + share * (cells.angleDeg(at) - cells.angleDeg(at - 1));
    }

    /** Turn between the cells on both sides of an angle: what bends within it is not seen, deg. */
    private static double gap(Cells cells, double deg) {
        int after = Math.min(cells.size() - 1, Math.max(1, cells.firstFrom(deg)));
        return cells.angleDeg(after) - cells.angleDeg(after - 1);
    }

    /** On a quiet curve the crossing between two cells, looked for near the smoothed one. */
    private static double firstPair(Cells cells, double snugNm, double coarse) {
        double best = coarse;
        double nearest = Double.POSITIVE_INFINITY;
        int from = cells.firstFrom(coarse - 10);
        for (int i = Math.max(1, from); i < cells.size() && cells.angleDeg(i - 1) <= coarse + 10; i++) {
            double below = cells.torqueNm(i - 1);
            double above = cells.torqueNm(i);
            if (below < snugNm && above >= snugNm) {
                double share = (snugNm - below) / (above - below);
                double deg = cells.angleDeg(i - 1) + share * (cells.angleDeg(i) - cells.angleDeg(i - 1));
                if (Math.abs(deg - coarse) < nearest) {
                    nearest = Math.abs(deg - coarse);
                    best = deg;
                }
            }
        }
        return best;
    }

    /** The crossing from a line through the cells near it; where they span less than the smoothing, along its slope. */
    private static double refine(
            Cells cells, double start, int n, double snugNm, double smoothSlope, double smoothSpanDeg) {
        double deg = start;
        for (int round = 0; round < 2; round++) {
            int middle = cells.firstFrom(deg);
            int from = Math.max(0, Math.min(middle - n / 2, cells.size() - n));
            int to = Math.min(cells.size(), from + n);
            var line = cells.fitted(from, to);
            boolean ownSlope = cells.angleDeg(to - 1) - cells.angleDeg(from) >= smoothSpanDeg;
            double slope = ownSlope ? line.slope() : smoothSlope;
            if (slope <= 0) {
                return start;
            }
            deg = line.meanX() + (snugNm - line.meanY()) / slope;
        }
        return deg;
    }
}
