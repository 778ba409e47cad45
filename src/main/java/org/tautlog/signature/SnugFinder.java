package org.tautlog.signature;

import java.util.Arrays;
import java.util.Locale;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.trace.Curve;

/**
 * The snug point: the first upward crossing of the snug torque that holds, interpolated on a line through as many cells
 * as the noise asks for.
 *
 * <p>Source: common practice: first upward crossing that stays above for 2 to 3 deg, linear interpolation.
 */
final class SnugFinder {
    /** Standard uncertainty aimed at when choosing how many cells to draw the line through, deg. */
    private static final double WANTED_DEG = 0.3;

    /** A rise from sample to sample beyond this many standard deviations of the noise is the joint's. */
    private static final double NOISE_FACTOR = 3;

    /** A rise from sample to sample beyond this many times the elastic line's is a spike. */
    private static final double SPIKE_RATIO = 1.5;

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
            var sums = new MovingLine.Sums(
                    Arrays.copyOfRange(cells.angles(), from, to),
                    Arrays.copyOfRange(cells.torques(), from, to),
                    to - from,
                    cells.scratch());
            sums.fit(0, to - from);
            boolean ownSlope = cells.angleDeg(to - 1) - cells.angleDeg(from) >= smoothSpanDeg;
            double slope = ownSlope ? sums.slope() : smoothSlope;
            if (slope <= 0) {
                return start;
            }
            deg = sums.meanX() + (snugNm - sums.meanY()) / slope;
        }
        return deg;
    }

    /**
     * Highest torque of the snug stage: the stage of the snug point as the export marks it, or up to the first pause
     * after which the turn goes on. Single samples are read as the median of three, so that one spike does not count; not
     * where the torque rises so far from sample to sample that the median would cut the peak. A sample written again says
     * nothing new: it does not vouch for a spike. After the highest sample the tool can have turned on unrecorded for up
     * to a step, at the torque rate; that stretch over sqrt(3) is in the standard uncertainty.
     */
    static Feature stageTorque(
            Curve curve, Stop stop, Turning turning, ElasticFit fit, Feature snugDeg, double noiseNm) {
        int last = lastOfStage(curve, stop, turning, snugDeg);
        if (last < 0) {
            return Feature.missing("the curve shows no end of the snug stage: no stage marks and no pause");
        }
        double slope = fit.line == null ? 0 : fit.line.slope();
        double highest = Double.NEGATIVE_INFINITY;
        int at = 0;
        for (int i = 0, before = 0; i <= last; before = i, i = nextOther(curve, i)) {
            int after = nextOther(curve, i);
            double a = curve.torqueNm(before);
            double b = curve.torqueNm(i);
            double c = curve.torqueNm(after <= last ? after : i);
            double middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
            double rise = slope * (curve.angleDeg(i) - curve.angleDeg(before));
            boolean coarse = rise > NOISE_FACTOR * noiseNm && b <= a + SPIKE_RATIO * rise + NOISE_FACTOR * noiseNm;
            double seen = coarse ? b : middle;
            at = seen > highest ? i : at;
            highest = Math.max(highest, seen);
        }
        double unseenNm = slope * unseenDeg(curve, at) / Math.sqrt(3);
        return Feature.of(highest, Math.hypot(noiseNm, unseenNm));
    }

    /** How far the tool can have turned past the highest sample of its stage. */
    private static double unseenDeg(Curve curve, int at) {
        int next = nextOther(curve, at);
        double onward = next < curve.size() ? curve.angleDeg(next) - curve.angleDeg(at) : 0;
        return Math.max(onward, Steps.longestBefore(curve, at));
    }

    /** The next sample that is not this one written again; one of another time was measured again. */
    private static int nextOther(Curve curve, int sample) {
        int next = sample + 1;
        while (next < curve.size()
                && curve.angleDeg(next) == curve.angleDeg(sample)
                && curve.torqueNm(next) == curve.torqueNm(sample)
                && !(curve.hasTime() && curve.timeS(next) != curve.timeS(sample))) {
            next++;
        }
        return next;
    }

    private static int lastOfStage(Curve curve, Stop stop, Turning turning, Feature snugDeg) {
        if (curve.hasStages() && curve.stage(stop.sample()) != curve.stage(0)) {
            int end = stop.sample();
            while (end > 0 && curve.stage(end) == curve.stage(stop.sample())) {
                end--;
            }
            if (!snugDeg.isFound()) {
                return end;
            }
            int at = 0;
            while (at < end && curve.angleDeg(at) < snugDeg.number()) {
                at++;
            }
            while (at < end && curve.stage(at + 1) == curve.stage(at)) {
                at++;
            }
            return at;
        }
        for (var pause : turning.pauses()) {
            if (snugDeg.isFound() && Math.abs(pause.angleDeg() - snugDeg.number()) < 60) {
                return pause.sample();
            }
        }
        return -1;
    }
}
