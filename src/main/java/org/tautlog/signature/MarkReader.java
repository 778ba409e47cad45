package org.tautlog.signature;

import org.tautlog.trace.Curve;

/** Reads the marks: what fault signatures need beside the features of a good curve. */
final class MarkReader {
    /** Least turn of the free turning that is called so, deg. */
    private static final double LEAST_RUNDOWN_DEG = 20;

    private static final double BEFORE_ORIGIN_DEG = 60;
    private static final double BEFORE_SNUG_DEG = 180;

    /** Gradient over torque rate from which on seating is over. */
    private static final double SEATED_RATIO = 0.8;

    /** Turn over which a sudden fall of the torque happens, deg. */
    private static final double SUDDEN_DEG = 3;

    /** Torque over snug torque from which on the joint bears, and below which the snug torque is lost. */
    private static final double BEARING_RATIO = 1.5;

    private static final double SNUG_LOST_RATIO = 0.6;

    private final Curve curve;
    private final Stop stop;
    private final Turning turning;
    private final Cells cells;
    private final MovingLine smooth;
    private final ElasticFit fit;
    private final double noiseNm;

    MarkReader(
            Curve curve, Stop stop, Turning turning, Cells cells, MovingLine smooth, ElasticFit fit, double noiseNm) {
        this.curve = curve;
        this.stop = stop;
        this.turning = turning;
        this.cells = cells;
        this.smooth = smooth;
        this.fit = fit;
        this.noiseNm = noiseNm;
    }

    CurveMarks marks(Feature prevailing, Feature originDeg, Feature snugDeg, double snugNm) {
        var noSnug = Feature.missing("no snug point");
        var rundown = rundown(originDeg, snugDeg);
        var first = Feature.of(firstTorque(), noiseNm);
        double start = turning.angleDeg(0);
        boolean snug = snugDeg.isFound();
        double turned = snugDeg.number() - start;
        var drop = snug ? drop(snugDeg.number()) : new double[] {0, 0};
        var saw = snug ? saw(snugDeg.number()) : noSnug;
        var slip = snug
                ? new SlipFinder(turning, cells, smooth, fit, noiseNm).longest(snugDeg.number(), saw)
                : new double[] {0, 0};
        return new CurveMarks(
                Feature.of(noiseNm, noiseNm / Math.sqrt(2.0 * Math.max(1, turning.size()))),
                snug ? Feature.of(turned, snugDeg.standardUncertainty()) : noSnug,
                rundown[0],
                rundown[1],
                seating(prevailing, snugDeg, snugNm, rundown[1]),
                snug ? Feature.of(snugLost(snugDeg.number(), snugNm), 0) : noSnug,
                snugGradient(snugDeg),
                snug && turned > 0 ? Feature.of((snugNm - first.number()) / turned, noiseNm / turned) : noSnug,
                saw,
                snug ? Feature.of(drop[0], noiseNm) : noSnug,
                drop[0] > 0 ? Feature.of(drop[1], 0) : Feature.missing("no sudden fall of torque"),
                snug ? Feature.of(slip[0], 0) : noSnug,
                slip[0] > 0 ? Feature.of(slip[1], 0) : Feature.missing("no turn without torque"),
                Feature.of(turning.jumpDeg(), 0),
                Feature.of(stop.springBackDeg(), 0),
                first,
                snug ? turning.size() - turning.firstFrom(snugDeg.number()) : 0,
                turning.pauses().size(),
                turning.backSteps(),
                TopRun.samples(turning),
                endsRunning(),
                stop.duplicated());
    }

    /** Least of the first three samples: a recording that begins free of load shows it in any of them. */
    private double firstTorque() {
        double least = curve.torqueNm(0);
        for (int i = 1; i < Math.min(3, stop.sample() + 1); i++) {
            least = Math.min(least, curve.torqueNm(i));
        }
        return least;
    }

    /** Turn over which a snug torque that was reached is gone again before the joint bears more than it. */
    private double snugLost(double snugDeg, double snugNm) {
        double lost = 0;
        for (int i = turning.firstFrom(snugDeg) + 1; i < turning.size(); i++) {
            if (turning.role(i) == Turning.Role.RELOADS) {
                continue;
            }
            if (turning.torqueNm(i) > BEARING_RATIO * snugNm && turning.role(i) == Turning.Role.TURNS) {
                break;
            }
            if (turning.torqueNm(i) < SNUG_LOST_RATIO * snugNm) {
                lost += turning.angleDeg(i) - turning.angleDeg(i - 1);
            }
        }
        return lost;
    }

    private Feature snugGradient(Feature snugDeg) {
        if (!snugDeg.isFound() || fit.line == null) {
            return Feature.missing("snug point or elastic line is missing");
        }
        int at = Math.min(cells.size() - 1, cells.firstFrom(snugDeg.number()));
        return Feature.of(fit.gradient.slope(at) / fit.line.slope(), fit.gradientNoise / fit.line.slope());
    }

    /** Highest smoothed torque and spread of the free turning. */
    private Feature[] rundown(Feature originDeg, Feature snugDeg) {
        double until = cells.angleDeg(cells.size() - 1);
        if (snugDeg.isFound()) {
            until = snugDeg.number() - BEFORE_SNUG_DEG;
            if (originDeg.isFound() && until < cells.angleDeg(0) + LEAST_RUNDOWN_DEG) {
                until = originDeg.number() - BEFORE_ORIGIN_DEG;
            }
        }
        int to = cells.firstFrom(until);
        if (to < 3 || cells.angleDeg(to - 1) - cells.angleDeg(0) < LEAST_RUNDOWN_DEG) {
            var none = Feature.missing("the recording holds less than 20 deg of free turning");
            return new Feature[] {none, none};
        }
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < to; i++) {
            highest = Math.max(highest, smooth.value(i));
        }
        var taken = Robust.taken(cells.torques(), 0, to);
        double spread = (Robust.percentile(taken, 0.95) - Robust.percentile(taken, 0.05)) / 3.29;
        return new Feature[] {Feature.of(highest, noiseNm), Feature.of(spread, spread / Math.sqrt(2.0 * to))};
    }

    private Feature seating(Feature prevailing, Feature snugDeg, double snugNm, Feature spread) {
        if (!prevailing.isFound() || fit.line == null) {
            return Feature.missing("free turning or elastic line is missing");
        }
        double level = prevailing.number() + Math.max(0.05 * snugNm, 3 * spread.number());
        int from = Math.min(cells.size() - 1, cells.firstFrom(snugDeg.number()));
        while (from > 0 && smooth.value(from) > level) {
            from--;
        }
        int to = from;
        while (to < cells.size() - 1 && fit.gradient.slope(to) < SEATED_RATIO * fit.line.slope()) {
            to++;
        }
        double seen = cells.angleDeg(Math.max(from, to - 1)) - cells.angleDeg(Math.min(from + 1, to));
        return Feature.of(Math.max(0, seen), fit.gradient.spanDeg() / 4);
    }

    /** Central 95 % of the torque about its local line. */
    private Feature saw(double snugDeg) {
        int from = cells.firstFrom(snugDeg + 10);
        int n = cells.size() - from;
        if (n < 20) {
            return Feature.missing("fewer than 20 cells past the snug point");
        }
        int step = Robust.step(n);
        var taken = new double[(n + step - 1) / step];
        for (int i = 0, j = from; i < taken.length; i++, j += step) {
            taken[i] = cells.torqueNm(j) - fit.gradient.value(j);
        }
        double saw = Robust.percentile(taken, 0.975) - Robust.percentile(taken, 0.025);
        return Feature.of(saw, saw / Math.sqrt(n));
    }

    /** Largest fall within a few degrees while the tool turned on, with its place. */
    private double[] drop(double snugDeg) {
        double largest = 0;
        double at = 0;
        for (int i = turning.firstFrom(snugDeg), back = i; i < turning.size(); i++) {
            while (turning.angleDeg(back) < turning.angleDeg(i) - SUDDEN_DEG && back < i - 1) {
                back++;
            }
            if (reloads(i) || (i > 0 && reloads(i - 1))) {
                back = i;
                continue;
            }
            double fall = turning.torqueNm(back) - turning.torqueNm(i);
            if (fall > largest) {
                largest = fall;
                at = turning.angleDeg(back);
            }
        }
        return new double[] {largest, at};
    }

    private boolean reloads(int i) {
        return turning.role(i) == Turning.Role.RELOADS || turning.role(i) == Turning.Role.RESTARTS;
    }

    /** A recording that ends mid-turn ends at its greatest angle, at full step and under full torque. */
    private boolean endsRunning() {
        int n = turning.size();
        if (stop.end() - 1 - stop.sample() > 1 || n < 10) {
            return false;
        }
        double recent = 0;
        double steps = turning.angleDeg(n - 1) - turning.angleDeg(n - 9);
        for (int i = n - 9; i < n - 1; i++) {
            recent += turning.torqueNm(i) / 8;
        }
        double lastStep = turning.angleDeg(n - 1) - turning.angleDeg(n - 2);
        double lastTorque = curve.torqueNm(stop.end() - 1);
        return lastTorque >= recent - Math.max(0.15 * Math.abs(recent), 4 * noiseNm) && lastStep >= 0.5 * steps / 8;
    }
}
