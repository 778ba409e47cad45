package org.tautlog.signature;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.tautlog.trace.Curve;

/**
 * Curves made from closed formulas of their own, with every feature known: a toe of rising slope, a straight line, and a
 * gradient that falls as a logistic curve of the angle. Nothing here comes from the program's own joint model.
 *
 * <pre>
 * torque(u) = prevailing + k (u + S/2)^2 / (2 S)                                             -S/2 to S/2
 *           = prevailing + k (rho u + (1 - rho) (u - w ln(1 + exp((u - y) / w))))            beyond
 * </pre>
 *
 * u is the angle past the elastic origin, S the length of the toe, y the middle of the knee, w its width, rho the gradient
 * ratio that remains.
 */
public final class MadeCurve {
    /** Everything that can be set; the values are those of a good tightening. */
    public double prevailingNm = 1.5;

    public double rateNmPerDeg = 0.16;
    public double seatingDeg = 40;
    public double rundownDeg = 720;
    public double startDeg = 0;
    public double snugNm = 20;
    public double turnDeg = 360;
    public double kneeDeg = 1e6;
    public double kneeWidthDeg = 4;
    public double remainingRatio = 0.1;
    public double stepDeg = 0.5;
    public double noiseShare = 0;
    public double noiseNm = 0;
    public long seed = 1;
    public boolean pause = true;
    public boolean stages = true;
    public boolean tail = true;
    public double springBackDeg = 3.5;
    public double spikeShare = 0.15;
    public double torqueFactor = 1;
    public double kiloHertz = 0;
    public double quantumDeg = 0.125;
    /** Resolution of the torque, N·m; 0 for none. */
    public double torqueStepNm = 0;
    /** How far the speed of the turn swings about its mean, a share: 0 for an even speed. */
    public double speedSwing = 0;
    /** Swing of the prevailing torque over one turn of the thread, a share of it. */
    public double runOutShare = 0;
    /** Torque over the formula's, by angle past the snug point: for faults. */
    public DoubleUnaryOperator torqueOfTurn = deg -> 1;
    /** Added torque by angle past the start: for faults of the rundown. */
    public DoubleUnaryOperator torqueOfRundown = deg -> 0;
    /** Angle that the bolt stood still while the angle went on, by turn of the tool past the snug point. */
    public DoubleUnaryOperator slipOfTurn = deg -> 0;

    private final List<double[]> rows = new ArrayList<>();
    private double snugNow;
    private double now;

    /** Angle of the elastic origin. */
    public double originDeg() {
        return startDeg + rundownDeg + seatingDeg / 2;
    }

    /** Exact angle of the snug torque, by bisection of the formula. */
    public double snugDeg() {
        double low = startDeg;
        double high = originDeg() + 4000;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            if (clean(middle) + runOut(middle) < snugNm) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    public double stopDeg() {
        return snugDeg() + turnDeg;
    }

    /** Exact angle at which the gradient ratio is a given one. */
    public double onsetDeg(double ratio) {
        double share = (ratio - remainingRatio) / (1 - remainingRatio);
        return originDeg() + kneeDeg + kneeWidthDeg * Math.log(1 / share - 1);
    }

    /** Torque without noise, faults and scale. */
    public double clean(double deg) {
        double u = deg - originDeg();
        if (u < -seatingDeg / 2) {
            return prevailingNm;
        }
        if (u < seatingDeg / 2) {
            double t = u + seatingDeg / 2;
            return prevailingNm + rateNmPerDeg * t * t / (2 * seatingDeg);
        }
        double z = (u - kneeDeg) / kneeWidthDeg;
        double past = z > 30 ? z : Math.log1p(Math.exp(z));
        return prevailingNm + rateNmPerDeg * (remainingRatio * u + (1 - remainingRatio) * (u - kneeWidthDeg * past));
    }

    private double runOut(double deg) {
        return runOutShare * prevailingNm * Math.sin(Math.toRadians(deg) + seed);
    }

    /** Two speeds beat against each other, so that no part of the turn is always slow. */
    private double speed(double deg) {
        return 1 + speedSwing * Math.sin(deg / 29) * Math.cos(deg / 83);
    }

    private double torque(double deg) {
        double turn = deg - snugNow;
        double slip = turn > 0 ? slipOfTurn.applyAsDouble(turn) : 0;
        double torque = clean(deg - slip) + torqueOfRundown.applyAsDouble(deg - startDeg);
        torque += runOut(deg);
        return turn > 0 ? torque * torqueOfTurn.applyAsDouble(turn) : torque;
    }

    public Curve make() {
        rows.clear();
        now = 0;
        double snug = snugDeg();
        snugNow = snug;
        double firstStop = snug + 1.5;
        double stop = snug + turnDeg;
        if (!pause) {
            turn(startDeg, stop, 0, 1);
        } else {
            turn(startDeg, Math.min(firstStop, stop), 0, 1);
            if (stop > firstStop) {
                rest(firstStop, springBackDeg, 1);
                turn(firstStop, stop, spikeShare, 2);
            }
        }
        if (tail) {
            rest(stop, springBackDeg, pause ? 2 : 1);
        }
        return curve();
    }

    /** The first samples of a curve, as a recording that ends early holds them. */
    public static Curve cut(Curve curve, int n) {
        return part(curve, 0, n);
    }

    /** Samples from inclusive to exclusive. */
    public static Curve part(Curve curve, int from, int to) {
        var part = Curve.of(
                Arrays.copyOfRange(curve.anglesDeg(), from, to), Arrays.copyOfRange(curve.torquesNm(), from, to));
        if (curve.hasTime()) {
            part = part.withTimeS(
                    IntStream.range(from, to).mapToDouble(curve::timeS).toArray());
        }
        return curve.hasStages()
                ? part.withStages(IntStream.range(from, to).map(curve::stage).toArray())
                : part;
    }

    private void turn(double from, double to, double spike, int stage) {
        boolean slow = stage == 2 || !pause;
        double angle = from;
        while (angle < to - 1e-9) {
            double since = angle - from;
            double factor = spike > 0 ? 1 + spike * Math.exp(-since / 1.2) : 1;
            row(angle, torque(angle) * factor, stage);
            double step = stepDeg;
            if (kiloHertz > 0) {
                double degPerSecond = slow || angle > snugNow - 150 ? 120 : 1800;
                step = degPerSecond * speed(angle) / 1000 / kiloHertz;
            }
            angle += step;
            now += 0.001;
        }
        row(to, torque(to), stage);
    }

    private void rest(double at, double back, int stage) {
        double full = torque(at);
        int n = kiloHertz > 0 ? (int) (100 * kiloHertz) : 6;
        for (int i = 1; i <= n; i++) {
            double share = Math.min(1, 2.0 * i / n);
            row(at - back * share, full * (1 - share), stage);
            now += 0.001;
        }
        if (stage == 1 && pause) {
            for (int i = 1; i <= 4; i++) {
                row(at - back * (1 - i / 5.0), full * i / 5.0, 2);
            }
        }
    }

    private void row(double angle, double torque, int stage) {
        rows.add(new double[] {angle, torque, now, stage});
    }

    private Curve curve() {
        var random = new SplittableRandom(seed);
        int n = rows.size();
        var angle = new double[n];
        var torque = new double[n];
        var time = new double[n];
        var stage = new int[n];
        for (int i = 0; i < n; i++) {
            var row = rows.get(i);
            angle[i] = kiloHertz > 0 ? Math.floor(row[0] / quantumDeg) * quantumDeg : row[0];
            double sigma = Math.hypot(noiseNm, noiseShare * row[1]);
            torque[i] = torqueFactor * rounded(row[1] + sigma * random.nextGaussian());
            time[i] = row[2];
            stage[i] = (int) row[3];
        }
        var curve = Curve.of(angle, torque);
        curve = kiloHertz > 0 ? curve.withTimeS(time) : curve;
        return stages ? curve.withStages(stage) : curve;
    }

    private double rounded(double torque) {
        return torqueStepNm > 0 ? Math.rint(torque / torqueStepNm) * torqueStepNm : torque;
    }
}
