package org.tautlog.signature;

import org.tautlog.trace.Curve;

/** Reads the marks: what fault signatures need beside the features of a good curve. */
final class MarkReader {
    /** Least turn of the free turning that is called so, deg. */
    private static final double LEAST_RUNDOWN_DEG = 20;

    private static final double BEFORE_ORIGIN_DEG = 60;
    private static final double BEFORE_SNUG_DEG = 180;

    /** Gradient over torque rate from which on seating is over, and below which an elastic gradient is lost. */
    private static final double SEATED_RATIO = 0.8;

    private static final double LOST_RATIO = 0.4;

    /** Turn over which a sudden fall of the torque happens, deg. */
    private static final double SUDDEN_DEG = 3;

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
        var first = Feature.of(
                Robust.median(turningTorques(Math.min(5, turning.size())), 0, Math.min(5, turning.size())), noiseNm);
        double start = turning.angleDeg(0);
        boolean snug = snugDeg.isFound();
        double turned = snugDeg.number() - start;
        var drop = snug ? drop(snugDeg.number()) : new double[] {0, 0};
        var slip = snug ? slip(snugDeg.number()) : new double[] {0, 0};
        var saw = snug ? saw(snugDeg.number()) : noSnug;
        return new CurveMarks(
                Feature.of(noiseNm, noiseNm / Math.sqrt(2.0 * Math.max(1, turning.size()))),
                snug ? Feature.of(turned, snugDeg.standardUncertainty()) : noSnug,
                rundown[0],
                rundown[1],
                seating(prevailing, snugDeg, snugNm, rundown[1]),
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
                saturated(),
                endsRunning(),
                stop.duplicated());
    }

    private double[] turningTorques(int n) {
        var torques = new double[n];
        for (int i = 0; i < n; i++) {
            torques[i] = turning.torqueNm(i);
        }
        return torques;
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
        var sorted = Robust.sorted(cells.torques(), 0, to);
        double spread = (Robust.percentile(sorted, 0.95) - Robust.percentile(sorted, 0.05)) / 3.29;
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
        return Feature.of(cells.angleDeg(to) - cells.angleDeg(from), fit.gradient.spanDeg() / 4);
    }

    /** Central 95 % of the torque about its local line. */
    private Feature saw(double snugDeg) {
        int from = cells.firstFrom(snugDeg + 10);
        int n = cells.size() - from;
        if (n < 20) {
            return Feature.missing("fewer than 20 cells past the snug point");
        }
        var away = new double[n];
        for (int i = 0; i < n; i++) {
            away[i] = cells.torqueNm(from + i) - fit.gradient.value(from + i);
        }
        var sorted = Robust.sorted(away, 0, n);
        double saw = Robust.percentile(sorted, 0.975) - Robust.percentile(sorted, 0.025);
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
            if (turning.role(i) == Turning.Role.RELOADS || turning.role(i) == Turning.Role.RESTARTS) {
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

    /** Longest turn without the torque that belongs to it, after which torque rises as before, with its place. */
    private double[] slip(double snugDeg) {
        var line = fit.line;
        if (line == null) {
            return new double[] {0, 0};
        }
        double longest = 0;
        double at = 0;
        for (var loss : turning.losses()) {
            double slip = loss.toDeg() - loss.fromDeg() - Math.max(0, (loss.toNm() - loss.fromNm()) / line.slope());
            if (loss.fromDeg() > snugDeg && slip > longest) {
                longest = slip;
                at = loss.fromDeg();
            }
        }
        for (int i = Math.max(1, cells.firstFrom(snugDeg + 5)); i < cells.size(); i++) {
            double step = cells.angleDeg(i) - cells.angleDeg(i - 1);
            double rise = cells.torqueNm(i) - cells.torqueNm(i - 1);
            double slip = step - Math.max(0, rise + 2 * noiseNm) / line.slope();
            if (step > 3 && slip > longest && !crossesPause(cells.angleDeg(i - 1), cells.angleDeg(i))) {
                longest = slip;
                at = cells.angleDeg(i - 1);
            }
        }
        return standing(snugDeg, longest, at);
    }

    private boolean crossesPause(double fromDeg, double toDeg) {
        for (var pause : turning.pauses()) {
            if (pause.angleDeg() >= fromDeg - 0.5 && pause.angleDeg() <= toDeg + 0.5) {
                return true;
            }
        }
        for (var loss : turning.losses()) {
            if (loss.fromDeg() <= toDeg && loss.toDeg() >= fromDeg) {
                return true;
            }
        }
        return false;
    }

    /** Stretches where the gradient is lost and comes back to elastic: the torque stands while the angle goes on. */
    private double[] standing(double snugDeg, double longestSoFar, double atSoFar) {
        var line = fit.line;
        if (line == null) {
            return new double[] {longestSoFar, atSoFar};
        }
        double longest = longestSoFar;
        double at = atSoFar;
        double half = smooth.spanDeg() / 2;
        int from = -1;
        for (int i = cells.firstFrom(snugDeg + smooth.spanDeg()); i < cells.size(); i++) {
            boolean lost = smooth.slope(i) < LOST_RATIO * line.slope();
            if (lost) {
                from = from < 0 ? i : from;
            } else if (from >= 0) {
                if (backToElastic(i)) {
                    double begin = cells.angleDeg(from) - half / 2;
                    double finish = cells.angleDeg(i) + half / 2;
                    int a = Math.max(0, cells.firstFrom(begin));
                    int b = Math.min(cells.size() - 1, cells.firstFrom(finish));
                    double rise = smooth.value(b) - smooth.value(a);
                    double slip = cells.angleDeg(b) - cells.angleDeg(a) - rise / line.slope();
                    if (slip > longest) {
                        longest = slip;
                        at = cells.angleDeg(from);
                    }
                }
                from = -1;
            }
        }
        return new double[] {longest, at};
    }

    /** Whether a span of elastic gradient follows within a span. */
    private boolean backToElastic(int i) {
        if (fit.line == null) {
            return false;
        }
        double least = SEATED_RATIO * fit.line.slope();
        double until = cells.angleDeg(i) + 2 * smooth.spanDeg();
        int since = -1;
        for (int j = i; j < cells.size() && cells.angleDeg(j) <= until; j++) {
            if (fit.gradient.slope(j) < least) {
                since = -1;
                continue;
            }
            since = since < 0 ? j : since;
            if (cells.angleDeg(j) - cells.angleDeg(since) >= smooth.spanDeg() / 2) {
                return true;
            }
        }
        return false;
    }

    private int saturated() {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < turning.size(); i++) {
            highest = Math.max(highest, turning.torqueNm(i));
        }
        int longest = 0;
        int run = 0;
        for (int i = 0; i < turning.size(); i++) {
            run = turning.torqueNm(i) == highest ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return noiseNm > 0 ? longest : 0;
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
