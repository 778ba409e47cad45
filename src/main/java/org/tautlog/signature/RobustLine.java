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
 * @param slope slope, N·m/deg
 * @param meanDeg weighted mean angle, deg
 * @param meanNm torque of the line at the mean angle, N·m
 * @param residualNm robust spread of the residuals, N·m
 * @param sumSquaresDeg2 weighted sum of squared angles about their mean, deg^2
 * @param points how many points were used
 * @param inflation by how much neighbouring residuals' likeness widens every standard uncertainty, at least 1
 */
record RobustLine(
        double slope,
        double meanDeg,
        double meanNm,
        double residualNm,
        double sumSquaresDeg2,
        int points,
        double inflation) {
    private static final double TUNING = 1.345;
    private static final int ROUNDS = 8;

    /** Relative change of the slope at which it has settled. */
    private static final double SETTLED = 1e-4;

    private static final int MOST_POINTS = 400;
    private static final double LARGEST_LIKENESS = 0.95;

    static RobustLine through(double[] x, double[] y, int from, int to) {
        int stride = Math.max(1, (to - from + MOST_POINTS - 1) / MOST_POINTS);
        int n = (to - from + stride - 1) / stride;
        var weight = new double[n];
        var residual = new double[n];
        java.util.Arrays.fill(weight, 1);
        double slope = 0;
        double mx = 0;
        double my = 0;
        double xx = 0;
        double scale = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double w = 0;
            double wx = 0;
            double wy = 0;
            for (int i = 0, j = from; i < n; i++, j += stride) {
                w += weight[i];
                wx += weight[i] * (x[j] - x[from]);
                wy += weight[i] * y[j];
            }
            mx = x[from] + wx / w;
            my = wy / w;
            xx = 0;
            double xy = 0;
            for (int i = 0, j = from; i < n; i++, j += stride) {
                double u = x[j] - mx;
                xx += weight[i] * u * u;
                xy += weight[i] * u * (y[j] - my);
            }
            double before = slope;
            slope = xx > 0 ? xy / xx : 0;
            for (int i = 0, j = from; i < n; i++, j += stride) {
                residual[i] = y[j] - my - slope * (x[j] - mx);
            }
            scale = Robust.spreadAbout(residual, 0);
            if (scale <= 0 || Math.abs(slope - before) < SETTLED * Math.abs(slope)) {
                break;
            }
            for (int i = 0; i < n; i++) {
                double away = Math.abs(residual[i]);
                weight[i] = away <= TUNING * scale ? 1 : TUNING * scale / away;
            }
        }
        return new RobustLine(slope, mx, my, scale, xx, n, inflation(residual));
    }

    double slopeUncertainty() {
        return sumSquaresDeg2 > 0 ? inflation * residualNm / Math.sqrt(sumSquaresDeg2) : 0;
    }

    double angleAt(double torqueNm) {
        return meanDeg + (torqueNm - meanNm) / slope;
    }

    double torqueAt(double angleDeg) {
        return meanNm + slope * (angleDeg - meanDeg);
    }

    /** Standard uncertainty of {@link #angleAt} for an exact torque. */
    double angleUncertainty(double angleDeg) {
        double away = angleDeg - meanDeg;
        double share = 1.0 / points + (sumSquaresDeg2 > 0 ? away * away / sumSquaresDeg2 : 0);
        return inflation * residualNm / Math.abs(slope) * Math.sqrt(share);
    }

    private static double inflation(double[] residual) {
        double products = 0;
        double squares = 0;
        for (int i = 0; i < residual.length; i++) {
            squares += residual[i] * residual[i];
            if (i > 0) {
                products += residual[i] * residual[i - 1];
            }
        }
        double likeness = squares > 0 ? Math.max(0, Math.min(LARGEST_LIKENESS, products / squares)) : 0;
        return Math.sqrt((1 + likeness) / (1 - likeness));
    }
}
