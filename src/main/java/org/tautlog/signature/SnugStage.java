package org.tautlog.signature;

import org.tautlog.trace.Curve;

/** The snug stage of a tightening: the highest torque that the tool brought before it paused or changed its stage. */
final class SnugStage {
    /** A rise from sample to sample beyond this many standard deviations of the noise is the joint's. */
    private static final double NOISE_FACTOR = 3;

    /** A rise from sample to sample beyond this many times the elastic line's is a spike. */
    private static final double SPIKE_RATIO = 1.5;

    /** Noise over the snug torque from which on the highest of many samples is their luck. */
    private static final double NOISY_SHARE = 0.01;

    /** Turn before the end of the stage through which a line is drawn then, deg, and its fewest and most cells. */
    private static final double LINE_DEG = 20;

    private static final int FEWEST_CELLS = 6;
    private static final int MOST_CELLS = 40;

    /** Torque over the snug torque below which the parts still draw together. */
    private static final double LOADED = 0.5;

    private static final double FARTHEST_PAUSE_DEG = 60;

    private final Curve curve;
    private final int last;

    private SnugStage(Curve curve, int last) {
        this.curve = curve;
        this.last = last;
    }

    /**
     * Highest torque of the snug stage: the stage of the snug point as the export marks it, or up to the first pause
     * after which the turn goes on. The highest of noisy samples is too high, so there it is the torque at the end of a
     * line through the last cells of the stage, or of the smoothed torque before, where that is higher. After the highest
     * sample the tool can have turned on unrecorded for up to a step, at the torque rate; that stretch over sqrt(3) is in
     * the standard uncertainty.
     */
    static Feature torque(
            Curve curve,
            Stop stop,
            Turning turning,
            Cells cells,
            MovingLine smooth,
            ElasticFit fit,
            Feature snugDeg,
            double snugNm,
            double noiseNm) {
        int last = lastOfStage(curve, stop, turning, snugDeg);
        if (last < 0) {
            return Feature.missing("the curve shows no end of the snug stage: no stage marks and no pause");
        }
        var stage = new SnugStage(curve, last);
        double slope = fit.line == null ? 0 : fit.line.slope();
        if (noiseNm > NOISY_SHARE * snugNm) {
            var line = stage.alongLine(cells, smooth, slope, LOADED * snugNm);
            if (line.isFound()) {
                return line;
            }
        }
        return stage.highest(slope, noiseNm);
    }

    /** Missing where too few cells lie before the end of the stage. */
    private Feature alongLine(Cells cells, MovingLine smooth, double slope, double loadedNm) {
        int at = 0;
        for (int i = 1; i <= last; i++) {
            at = curve.angleDeg(i) > curve.angleDeg(at) && !Stop.wild(curve, i) ? i : at;
        }
        double endDeg = curve.angleDeg(at);
        int to = Math.min(cells.size(), cells.firstFrom(Math.nextUp(endDeg)));
        int from = Math.max(to - MOST_CELLS, cells.firstFrom(endDeg - LINE_DEG));
        while (from < to && smooth.value(from) < loadedNm) {
            from++;
        }
        if (to - from < FEWEST_CELLS) {
            return Feature.missing("too few cells before the end of the snug stage");
        }
        var line = cells.fitted(from, to);
        double highest = line.at(endDeg);
        for (int i = 0; i < from; i++) {
            highest = Math.max(highest, smooth.value(i));
        }
        double squares = 0;
        for (int i = from; i < to; i++) {
            squares += Math.pow(cells.torqueNm(i) - line.at(cells.angleDeg(i)), 2);
        }
        double uncertainty = 2 * Math.sqrt(squares / (to - from - 2) / (to - from));
        return Feature.of(highest, Math.hypot(uncertainty, slope * unseenDeg(at) / Math.sqrt(3)));
    }

    /**
     * Single samples are read as the median of three, so that one spike does not count; not where the torque rises so far
     * from sample to sample that the median would cut the peak. A sample written again says nothing new: it does not vouch
     * for a spike.
     */
    private Feature highest(double slope, double noiseNm) {
        double highest = Double.NEGATIVE_INFINITY;
        int at = 0;
        for (int i = 0, before = 0; i <= last; before = i, i = nextOther(i)) {
            int after = nextOther(i);
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
        double unseenNm = slope * unseenDeg(at) / Math.sqrt(3);
        return Feature.of(highest, Math.hypot(noiseNm, unseenNm));
    }

    /** How far the tool can have turned past the highest sample of its stage. */
    private double unseenDeg(int at) {
        int next = nextOther(at);
        double onward = next < curve.size() ? curve.angleDeg(next) - curve.angleDeg(at) : 0;
        return Math.max(onward, Steps.longestBefore(curve, at));
    }

    /** The next sample that is not this one written again; one of another time was measured again. */
    private int nextOther(int sample) {
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
        int last = -1;
        double nearest = FARTHEST_PAUSE_DEG;
        for (var pause : turning.pauses()) {
            double away = Math.abs(pause.angleDeg() - snugDeg.number());
            if (snugDeg.isFound() && away < nearest) {
                nearest = away;
                last = pause.sample();
            }
        }
        return last;
    }
}
