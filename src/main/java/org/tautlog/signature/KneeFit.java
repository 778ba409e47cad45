package org.tautlog.signature;

/**
 * A straight line that bends once: the gradient is that of the line, falls evenly over a turn, and stays. Whether there is a
 * bend at all is told against the straight line alone.
 *
 * <pre>
 * T = a + b x + g R(x)      R = 0 up to t,  (x - t)^2 / (2 d) to t + d,  x - t - d/2 beyond
 *
 * gain = n ln(SSE straight / SSE bent) - 3 ln n      a knee where the gain exceeds 10
 * </pre>
 *
 * b is held near the elastic line's slope by that line's own uncertainty. Blocks of a few degrees are fitted, t and d by
 * search, a, b and g by least squares.
 *
 * <p>Source: segmented least squares with free knots; Schwarz, Annals of Statistics 6 (1978) 461-464, and Kass and Raftery,
 * J. Am. Stat. Assoc. 90 (1995) 773-795: above 10 is very strong.
 */
final class KneeFit {
    private static final double BLOCK_DEG = 4;
    private static final double KNOT_STEP_DEG = 8;
    private static final double[] WIDTHS_DEG = {4, 12, 25, 45, 75, 120};
    private static final double FINEST_DEG = 0.4;
    private static final double MARGIN_DEG = 10;
    private static final int LEAST_BLOCKS = 12;

    private final double[] x;
    private final double[] weight;
    private final int n;
    private final double slope;
    private final double slopeWeight;
    private final double allWeight;

    /** Angle about the mean, times its weight; torque about the mean; ramp of the bend that is tried. */
    private final double[] weighedX;

    private final double[] aboutY;
    private final double[] ramp;
    private double xx;
    private double xy;
    private double yy;
    private double b;
    private double g;
    private double bestSse = Double.POSITIVE_INFINITY;
    private double bestT;
    private double bestD;

    /**
     * What came of it.
     *
     * @param gain how much better the bent line is, in units of the information criterion
     * @param fromDeg where the gradient begins to fall, deg
     * @param toDeg where it stops falling, deg
     * @param ratio gradient past the knee over the one before it
     * @param slope gradient before the knee, N·m/deg
     */
    record Knee(double gain, double fromDeg, double toDeg, double ratio, double slope) {
        /** Where the gradient has fallen to a share of the one before the knee, or NaN where it does not fall so far. */
        double angleDeg(double share) {
            return ratio < share ? fromDeg + (toDeg - fromDeg) * (1 - share) / (1 - ratio) : Double.NaN;
        }
    }

    private KneeFit(Cells cells, int from, double noiseNm, RobustLine line) {
        double turned = cells.angleDeg(cells.size() - 1) - cells.angleDeg(from);
        int most = (int) Math.min(cells.size() - from, turned / BLOCK_DEG + 2);
        x = new double[most];
        var y = new double[most];
        weight = new double[most];
        int blocks = 0;
        int i = from;
        while (i < cells.size()) {
            double start = cells.angleDeg(i);
            int first = i;
            double sx = 0;
            double sy = 0;
            while (i < cells.size() && cells.angleDeg(i) < start + BLOCK_DEG) {
                sx += cells.angleDeg(i);
                sy += cells.torqueNm(i);
                i++;
            }
            x[blocks] = sx / (i - first);
            y[blocks] = sy / (i - first);
            weight[blocks] = i - first;
            blocks++;
        }
        n = blocks;
        slope = line.slope();
        double own = Math.max(line.slopeUncertainty(), 1e-4 * slope);
        slopeWeight = Math.pow(Math.max(noiseNm, line.residualNm()) / own, 2);
        weighedX = new double[n];
        aboutY = new double[n];
        ramp = new double[n];
        allWeight = sumsWithoutBend(y);
    }

    /** What no bend changes, once for all that are tried; the sum of the weights. */
    private double sumsWithoutBend(double[] y) {
        double w = 0;
        double wx = 0;
        double wy = 0;
        for (int i = 0; i < n; i++) {
            w += weight[i];
            wx += weight[i] * x[i];
            wy += weight[i] * y[i];
        }
        double mx = wx / w;
        double my = wy / w;
        xx = slopeWeight;
        xy = slopeWeight * slope;
        yy = slopeWeight * slope * slope;
        for (int i = 0; i < n; i++) {
            double u = x[i] - mx;
            double z = y[i] - my;
            weighedX[i] = weight[i] * u;
            aboutY[i] = z;
            xx += weighedX[i] * u;
            xy += weighedX[i] * z;
            yy += weight[i] * z * z;
        }
        return w;
    }

    static Knee of(Cells cells, ElasticFit fit, RobustLine line, double noiseNm) {
        int from = Math.max(fit.from, cells.firstFrom(line.breakDeg() + 1e-9));
        var knee = new KneeFit(cells, Math.min(from, cells.size() - 1), noiseNm, line);
        return knee.n < LEAST_BLOCKS ? new Knee(0, 0, 0, 1, line.slope()) : knee.find();
    }

    private Knee find() {
        double straight = solve(Double.POSITIVE_INFINITY, 1);
        double first = x[0] + MARGIN_DEG;
        double last = x[n - 1] - MARGIN_DEG / 2;
        for (double t = first; t < last; t += KNOT_STEP_DEG) {
            for (double d : WIDTHS_DEG) {
                if (t + d < x[n - 1] + d / 2) {
                    tryAt(t, d);
                }
            }
        }
        for (double step = KNOT_STEP_DEG / 2; step > FINEST_DEG; step /= 2) {
            double t = bestT;
            double d = bestD;
            for (int i = -1; i <= 1; i++) {
                for (int j = -1; j <= 1; j++) {
                    if (d + 2 * j * step > 1 && t + i * step > first) {
                        tryAt(t + i * step, d + 2 * j * step);
                    }
                }
            }
        }
        if (bestSse >= straight || Double.isInfinite(bestSse)) {
            return new Knee(0, 0, 0, 1, slope);
        }
        solve(bestT, bestD);
        double gain = n * Math.log(straight / Math.max(bestSse, 1e-12)) - 3 * Math.log(n);
        return new Knee(gain, bestT, bestT + bestD, Math.max(-1, (b + g) / b), b);
    }

    private void tryAt(double t, double d) {
        double sse = solve(t, d);
        if (sse < bestSse && g < 0) {
            bestSse = sse;
            bestT = t;
            bestD = d;
        }
    }

    /** Least squares for b and g about the means, so that a drops out; the sum of squares that is left. */
    private double solve(double t, double d) {
        double wr = 0;
        int first = 0;
        while (first < n && x[first] <= t) {
            ramp[first++] = 0;
        }
        for (int i = first; i < n; i++) {
            double past = x[i] - t;
            ramp[i] = past < d ? past * past / (2 * d) : past - d / 2;
            wr += weight[i] * ramp[i];
        }
        double mr = wr / allWeight;
        double xr = 0;
        double rr = 0;
        double ry = 0;
        for (int i = 0; i < n; i++) {
            double v = ramp[i] - mr;
            double wv = weight[i] * v;
            xr += weighedX[i] * v;
            rr += wv * v;
            ry += wv * aboutY[i];
        }
        double det = xx * rr - xr * xr;
        boolean bent = rr > 0 && det > 1e-12 * xx * rr;
        b = bent ? (xy * rr - ry * xr) / det : xy / xx;
        g = bent ? (ry * xx - xy * xr) / det : 0;
        return Math.max(0, yy - b * xy - g * ry);
    }
}
