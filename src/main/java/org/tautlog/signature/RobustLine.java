package org.tautlog.signature;

/**
 * A straight line that a few wild points do not move.
 *
 * <pre>
 * minimise sum w r^2,  w = 1 for |r| up to c s, else c s / |r|,  s = 1.4826 median |r|,  c = 1.345
 * </pre>
 *
 * Source: Huber's M-estimator by iterated weights, c for 95 % efficiency on normal residuals.
 *
 * A line may be broken once: both parts have one slope, each its own height. A joint that relaxes while the tool pauses
 * goes on parallel to where it was, a degree or two of turn later.
 *
 * @param slope slope, N·m/deg
 * @param meanDeg weighted mean angle of the part past the break, deg
 * @param meanNm torque of the line at the mean angle, N·m
 * @param residualNm robust spread of the residuals, N·m
 * @param sumSquaresDeg2 weighted sum of squared angles about the means of their parts, deg^2
 * @param points how many points of the part past the break were used
 * @param inflation by how much neighbouring residuals' likeness widens every standard uncertainty, at least 1
 * @param breakDeg angle of the break, deg; negative infinity where there is none
 * @param stepNm how far the part before the break lies above the line past it, N·m
 */
record RobustLine(
        double slope,
        double meanDeg,
        double meanNm,
        double residualNm,
        double sumSquaresDeg2,
        int points,
        double inflation,
        double breakDeg,
        double stepNm) {
    private static final double TUNING = 1.345;
    private static final int ROUNDS = 8;

    /** Relative change of the slope at which it has settled. */
    private static final double SETTLED = 1e-4;

    private static final int MOST_POINTS = 400;
    private static final double LARGEST_LIKENESS = 0.95;
    private static final int LEAST_PART_POINTS = 10;
    private static final double LEAST_PART_DEG = 12;

    /** Turn past a pause in which the bolt still breaks loose. */
    private static final double SETTLING_DEG = 12;

    static RobustLine through(double[] x, double[] y, int from, int to) {
        return through(x, y, from, to, Double.NEGATIVE_INFINITY, new Scratch());
    }

    static RobustLine through(Cells cells, int from, int to) {
        return through(cells, from, to, Double.NEGATIVE_INFINITY);
    }

    /** The line past a break, with all that both parts say of the slope; a part too short says nothing. */
    static RobustLine through(Cells cells, int from, int to, double breakDeg) {
        int mark = cells.scratch().mark();
        var line = through(cells.angles(), cells.torques(), from, to, breakDeg, cells.scratch());
        cells.scratch().backTo(mark);
        return line;
    }

    private static RobustLine through(double[] x, double[] y, int from, int to, double breakDeg, Scratch scratch) {
        int at = firstPast(x, from, to, breakDeg);
        int settled = firstPast(x, at, to, breakDeg + SETTLING_DEG);
        boolean before = enough(x, from, at);
        boolean past = enough(x, settled, to);
        if (before && past) {
            return new Fit(x, y, from, at, settled, to, scratch).line(breakDeg);
        }
        if (at == from || at == to || before == past) {
            return new Fit(x, y, from, from, from, to, scratch).line(Double.NEGATIVE_INFINITY);
        }
        return before
                ? new Fit(x, y, from, from, from, at, scratch).line(Double.NEGATIVE_INFINITY)
                : new Fit(x, y, settled, settled, settled, to, scratch).line(Double.NEGATIVE_INFINITY);
    }

    private static int firstPast(double[] x, int from, int to, double deg) {
        int at = from;
        while (at < to && x[at] <= deg) {
            at++;
        }
        return at;
    }

    private static boolean enough(double[] x, int from, int to) {
        return to - from >= LEAST_PART_POINTS && x[to - 1] - x[from] >= LEAST_PART_DEG;
    }

    /** Iterated weights over one part or two. */
    private static final class Fit {
        private final double[] x;
        private final double[] y;
        private final int n;
        private final int split;
        private final double[] weight;
        private final double[] residual;
        private final double[] away;
        private final double[] meanX = new double[2];
        private final double[] meanY = new double[2];
        private double slope;
        private double xx;

        /** Points from inclusive to at exclusive, and from past inclusive to exclusive. */
        Fit(double[] x, double[] y, int from, int at, int past, int to, Scratch scratch) {
            int stride = Math.max(1, (at - from + to - past + MOST_POINTS - 1) / MOST_POINTS);
            split = (at - from + stride - 1) / stride;
            n = split + (to - past + stride - 1) / stride;
            this.x = scratch.doubles(n);
            this.y = scratch.doubles(n);
            weight = scratch.doubles(n);
            residual = scratch.doubles(n);
            away = scratch.doubles(n);
            for (int i = 0; i < n; i++) {
                int taken = i < split ? from + i * stride : past + (i - split) * stride;
                this.x[i] = x[taken];
                this.y[i] = y[taken];
                weight[i] = 1;
            }
        }

        RobustLine line(double breakDeg) {
            double scale = 0;
            for (int round = 0; round < ROUNDS; round++) {
                means(0, 0, split);
                means(1, split, n);
                double before = slope;
                slope();
                for (int i = 0; i < n; i++) {
                    int part = i < split ? 0 : 1;
                    residual[i] = y[i] - meanY[part] - slope * (x[i] - meanX[part]);
                }
                scale = Robust.spread(residual, n, away);
                if (scale <= 0 || Math.abs(slope - before) < SETTLED * Math.abs(slope)) {
                    break;
                }
                for (int i = 0; i < n; i++) {
                    double off = Math.abs(residual[i]);
                    weight[i] = off <= TUNING * scale ? 1 : TUNING * scale / off;
                }
            }
            double step = split == 0 ? 0 : meanY[0] - slope * meanX[0] - (meanY[1] - slope * meanX[1]);
            return new RobustLine(
                    slope, meanX[1], meanY[1], scale, xx, n - split, inflation(residual, n), breakDeg, step);
        }

        private void means(int part, int first, int last) {
            double w = 0;
            double wx = 0;
            double wy = 0;
            for (int i = first; i < last; i++) {
                w += weight[i];
                wx += weight[i] * (x[i] - x[0]);
                wy += weight[i] * y[i];
            }
            meanX[part] = w > 0 ? x[0] + wx / w : 0;
            meanY[part] = w > 0 ? wy / w : 0;
        }

        private void slope() {
            xx = 0;
            double xy = 0;
            for (int i = 0; i < n; i++) {
                int part = i < split ? 0 : 1;
                double u = x[i] - meanX[part];
                xx += weight[i] * u * u;
                xy += weight[i] * u * (y[i] - meanY[part]);
            }
            slope = xx > 0 ? xy / xx : 0;
        }
    }

    double slopeUncertainty() {
        return sumSquaresDeg2 > 0 ? inflation * residualNm / Math.sqrt(sumSquaresDeg2) : 0;
    }

    double angleAt(double torqueNm) {
        return meanDeg + (torqueNm - meanNm) / slope;
    }

    double torqueAt(double angleDeg) {
        return meanNm + slope * (angleDeg - meanDeg) + (angleDeg <= breakDeg ? stepNm : 0);
    }

    /** Standard uncertainty of {@link #angleAt} for an exact torque. */
    double angleUncertainty(double angleDeg) {
        double away = angleDeg - meanDeg;
        double share = 1.0 / points + (sumSquaresDeg2 > 0 ? away * away / sumSquaresDeg2 : 0);
        return inflation * residualNm / Math.abs(slope) * Math.sqrt(share);
    }

    private static double inflation(double[] residual, int n) {
        double products = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            squares += residual[i] * residual[i];
            if (i > 0) {
                products += residual[i] * residual[i - 1];
            }
        }
        double likeness = squares > 0 ? Math.max(0, Math.min(LARGEST_LIKENESS, products / squares)) : 0;
        return Math.sqrt((1 + likeness) / (1 - likeness));
    }
}
