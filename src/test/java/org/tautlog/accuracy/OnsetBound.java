package org.tautlog.accuracy;

import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.linear.MatrixUtils;
import org.tautlog.line.PhysicalBench;
import org.tautlog.trace.Curve;

/**
 * How well an onset can be read at all from samples each 0.5 deg with independent noise of 0.5 % of the final torque.
 *
 * <pre>
 * var(onset) >= g' F^-1 g        F = sum over samples of dT dT' / sigma^2
 *
 * T    torque of the closed formula: line of unknown height and slope k, knee of unknown place y, width w, remaining ratio rho,
 *      two swings of the free turning of unknown size and phase
 * dT   its derivatives by what is unknown; g those of the onset, where the gradient is k / 2
 * </pre>
 *
 * <p>Source: Cramer (1946) and Rao (1945), the bound on any unbiased estimate, from memory. Bias and spread of a regression
 * slope over a span: elementary.
 */
final class OnsetBound {
    private static final double STEP_DEG = 0.5;
    private static final double NOISE_SHARE = 0.005;
    private static final double RATE = 0.145;
    private static final double WIDTH_DEG = 5.5;
    private static final double REMAINING = 0.125;
    private static final double SNUG_PAST_ORIGIN_DEG = 128;
    private static final double PAST_DEG = 65;
    private static final double SEATED_DEG = 20;
    private static final double PREVAILING_NM = 1.6;
    private static final double[] ONSETS = {40, 100, 200, 300, 400};
    private static final double[] SPANS = {10, 20, 30, 40, 60, 80};
    /** Line and place alone; with the knee's shape; with the run-out as well. */
    private static final int[] UNKNOWN = {3, 5, 9};

    private OnsetBound() {}

    static String page() {
        var text = new StringBuilder("""
                ### What bounds the onset

                By the noise alone: the least spread of any unbiased reading of the formula's knee (Cramer and Rao), from closed seating
                to 65 deg past the onset, deg. The program presumes no formula of a knee, so it cannot reach these.

                | onset past the snug point | formula known, place unknown | width and remaining gradient unknown too | two swings of run-out unknown too |
                | --- | --- | --- | --- |
                """);
        for (double onset : ONSETS) {
            text.append(String.format(Locale.ROOT, "| %.0f deg |", onset));
            for (int unknown : UNKNOWN) {
                text.append(String.format(Locale.ROOT, " %.2f |", leastSpreadDeg(onset, unknown)));
            }
            text.append('\n');
        }
        text.append("""

                By the trade of noise against roundness: the gradient as the slope of a straight line over a span, on the physics' own
                knee without run-out, onset 220 deg past the snug point, deg. A short span is noisy, a long one is drawn late by the knee.

                | span | bias | spread | 95 % |
                | --- | --- | --- | --- |
                """);
        var knee = new Knee();
        for (double span : SPANS) {
            double bias = knee.biasDeg(span);
            double spread = knee.spreadDeg(span);
            text.append(String.format(
                    Locale.ROOT, "| %.0f deg | %+.2f | %.2f | %.2f |\n", span, bias, spread, usual(bias, spread)));
        }
        text.append(String.format(Locale.ROOT, """

                And by the run-out: a swing of 8 %% once a turn and of 4 %% at 3.1 a turn of %.1f N·m changes the gradient by %.4f N·m/deg
                (root of the mean square), which at this knee is %.1f deg of onset where nothing is taken out.
                """, PREVAILING_NM, runOutRate(), runOutRate() / knee.rateFallPerDeg()));
        return text.toString();
    }

    static double leastSpreadDeg(double onsetPastSnugDeg, int unknown) {
        var middle = new double[] {0, RATE, SNUG_PAST_ORIGIN_DEG + onsetPastSnugDeg, WIDTH_DEG, REMAINING, 0, 0, 0, 0};
        middle[2] += middle[2] - onset(middle);
        double stopDeg = SNUG_PAST_ORIGIN_DEG + onsetPastSnugDeg + PAST_DEG;
        double noiseNm = NOISE_SHARE * (PREVAILING_NM + torque(middle, stopDeg));
        var information = new double[unknown][unknown];
        for (double deg = SEATED_DEG; deg <= stopDeg; deg += STEP_DEG) {
            var slope = new double[unknown];
            for (int i = 0; i < unknown; i++) {
                slope[i] = (torque(moved(middle, i, 1), deg) - torque(moved(middle, i, -1), deg)) / (2 * MOVE);
            }
            for (int i = 0; i < unknown; i++) {
                for (int j = 0; j < unknown; j++) {
                    information[i][j] += slope[i] * slope[j] / noiseNm / noiseNm;
                }
            }
        }
        var covariance = MatrixUtils.inverse(MatrixUtils.createRealMatrix(information));
        var gradient = new double[unknown];
        Arrays.setAll(gradient, i -> (onset(moved(middle, i, 1)) - onset(moved(middle, i, -1))) / (2 * MOVE));
        double variance = 0;
        for (int i = 0; i < unknown; i++) {
            for (int j = 0; j < unknown; j++) {
                variance += gradient[i] * covariance.getEntry(i, j) * gradient[j];
            }
        }
        return Math.sqrt(variance);
    }

    private static final double MOVE = 1e-5;

    private static double[] moved(double[] values, int i, int sign) {
        var moved = values.clone();
        moved[i] += sign * MOVE;
        return moved;
    }

    private static double torque(double[] p, double deg) {
        double past = p[3] * Math.log1p(Math.exp((deg - p[2]) / p[3]));
        double turn = Math.toRadians(deg);
        return p[0]
                + p[1] * (p[4] * deg + (1 - p[4]) * (deg - past))
                + p[5] * Math.cos(turn)
                + p[6] * Math.sin(turn)
                + p[7] * Math.cos(3.1 * turn)
                + p[8] * Math.sin(3.1 * turn);
    }

    private static double onset(double[] p) {
        return p[2] + p[3] * Math.log((1 - p[4]) / (0.5 - p[4]) - 1);
    }

    private static double runOutRate() {
        double perDeg = Math.PI / 180 * PREVAILING_NM;
        return Math.hypot(0.08 * perDeg, 0.04 * 3.1 * perDeg) / Math.sqrt(2);
    }

    /** The size that a normal error of this bias and spread exceeds in 5 of 100. */
    static double usual(double bias, double spread) {
        var normal = NormalDistribution.of(bias, spread);
        double low = 0;
        double high = Math.abs(bias) + 5 * spread;
        while (high - low > 1e-6) {
            double middle = (low + high) / 2;
            if (normal.cumulativeProbability(middle) - normal.cumulativeProbability(-middle) < 0.95) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** The knee of the physics, drawn without noise. */
    private static final class Knee {
        private static final double ONSET_DEG = 220;
        private final PhysicalBench.Known known;
        private final double noiseNm;

        Knee() {
            var bench = new PhysicalBench();
            bench.noiseShare = 0;
            bench.prevailingNm = 0;
            bench.torqueStepNm = 1e-6;
            bench.angleStepDeg = STEP_DEG;
            bench.onsetPastSnugDeg = ONSET_DEG;
            bench.turnDeg = ONSET_DEG + PAST_DEG;
            known = bench.run();
            noiseNm =
                    NOISE_SHARE * Arrays.stream(known.curve().torquesNm()).max().orElseThrow();
        }

        double biasDeg(double span) {
            double low = known.onsetDeg() - 40;
            double high = known.onsetDeg() + PAST_DEG - span / 2;
            while (high - low > 0.01) {
                double middle = (low + high) / 2;
                if (slope(middle, span) > known.rateNmPerDeg() / 2) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return high - known.onsetDeg();
        }

        double spreadDeg(double span) {
            double at = known.onsetDeg() + biasDeg(span);
            double slopeSpread = noiseNm * Math.sqrt(12 * STEP_DEG / span) / span;
            return slopeSpread / ((slope(at - 2, span) - slope(at + 2, span)) / 4);
        }

        double rateFallPerDeg() {
            double at = known.onsetDeg();
            return (slope(at - 4, 8) - slope(at + 4, 8)) / 8;
        }

        /** Slope of the regression line over a span about an angle, between samples as a polygon. */
        private double slope(double at, double span) {
            double cross = 0;
            double square = 0;
            for (int i = -200; i <= 200; i++) {
                double off = span * i / 400;
                cross += off * torque(at + off);
                square += off * off;
            }
            return cross / square;
        }

        private double torque(double deg) {
            Curve curve = known.curve();
            int i = curve.size() - 1;
            while (curve.angleDeg(i) < known.stopDeg() - 1) {
                i--;
            }
            while (curve.angleDeg(i) > deg) {
                i--;
            }
            double share = (deg - curve.angleDeg(i)) / (curve.angleDeg(i + 1) - curve.angleDeg(i));
            return curve.torqueNm(i) + share * (curve.torqueNm(i + 1) - curve.torqueNm(i));
        }
    }
}
