package org.tautlog.signature;

/**
 * Least-squares line through the points within half a span either side of each point: local gradient and local value.
 *
 * <pre>
 * slope(i) = sum((x - mean x)(y - mean y)) / sum((x - mean x)^2)  over |x - x(i)| at most span / 2
 * </pre>
 *
 * Near the ends the window keeps its span and stops at the end, so the slope there belongs to the window's middle. A
 * window without two different angles has slope 0 and the mean as value.
 *
 * <p>Source: ordinary least squares; centred windows do not lag. Prefix sums make it one pass.
 */
final class MovingLine {
    private final double[] slope;
    private final double[] value;
    private final double spanDeg;

    private MovingLine(double[] slope, double[] value, double spanDeg) {
        this.slope = slope;
        this.value = value;
        this.spanDeg = spanDeg;
    }

    static MovingLine through(double[] x, double[] y, int size, double spanDeg) {
        return through(x, size, new Sums(x, y, size), spanDeg);
    }

    /** The same from sums that serve several spans. */
    static MovingLine through(double[] x, int size, Sums sums, double spanDeg) {
        var slope = new double[size];
        var value = new double[size];
        int from = 0;
        int to = 0;
        double half = spanDeg / 2;
        for (int i = 0; i < size; i++) {
            double middle = Math.max(x[0] + half, Math.min(x[i], x[size - 1] - half));
            while (from < i && x[from] < middle - half) {
                from++;
            }
            while (to < size && x[to] <= middle + half) {
                to++;
            }
            to = Math.max(to, i + 1);
            sums.fit(from, to);
            slope[i] = sums.slope;
            value[i] = sums.at(x[i]);
        }
        return new MovingLine(slope, value, spanDeg);
    }

    double slope(int i) {
        return slope[i];
    }

    double value(int i) {
        return value[i];
    }

    double[] slopes() {
        return slope;
    }

    double[] values() {
        return value;
    }

    double spanDeg() {
        return spanDeg;
    }

    /** Prefix sums about the last point, so that large angles cost no digits where they matter. */
    static final class Sums {
        private final double[] sx;
        private final double[] sy;
        private final double[] sxx;
        private final double[] sxy;
        private final double x0;
        private final double y0;
        private double slope;
        private double meanX;
        private double meanY;

        Sums(double[] x, double[] y, int size) {
            sx = new double[size + 1];
            sy = new double[size + 1];
            sxx = new double[size + 1];
            sxy = new double[size + 1];
            x0 = size == 0 ? 0 : x[size - 1];
            y0 = size == 0 ? 0 : y[size - 1];
            for (int i = 0; i < size; i++) {
                double u = x[i] - x0;
                double v = y[i] - y0;
                sx[i + 1] = sx[i] + u;
                sy[i + 1] = sy[i] + v;
                sxx[i + 1] = sxx[i] + u * u;
                sxy[i + 1] = sxy[i] + u * v;
            }
        }

        /** Fits the points from inclusive to exclusive; there is at least one. */
        void fit(int from, int to) {
            double n = to - from;
            double mx = (sx[to] - sx[from]) / n;
            double my = (sy[to] - sy[from]) / n;
            double xx = sxx[to] - sxx[from] - n * mx * mx;
            double xy = sxy[to] - sxy[from] - n * mx * my;
            slope = xx > 1e-6 ? xy / xx : 0;
            meanX = mx + x0;
            meanY = my + y0;
        }

        double slope() {
            return slope;
        }

        double meanX() {
            return meanX;
        }

        double meanY() {
            return meanY;
        }

        double at(double x) {
            return meanY + slope * (x - meanX);
        }
    }
}
