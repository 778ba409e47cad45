package org.tautlog.signature;

import java.util.Arrays;

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
    /** So many points at least are filled at once where one is asked for. */
    private static final int BLOCK = 64;

    private final double[] x;
    private final int size;
    private final Sums sums;
    private final double[] slope;
    private final double[] value;
    private final double spanDeg;

    /** The points from here on are filled: of most lines only the loaded end is ever asked for. */
    private int filled;

    /** A line over points whose sums may serve several spans. */
    MovingLine(double[] x, int size, Sums sums, double spanDeg, Scratch scratch) {
        this.x = x;
        this.size = size;
        this.sums = sums;
        this.slope = scratch.doubles(size);
        this.value = scratch.doubles(size);
        this.spanDeg = spanDeg;
        this.filled = size;
    }

    static MovingLine through(double[] x, double[] y, int size, double spanDeg) {
        var scratch = new Scratch();
        return new MovingLine(x, size, new Sums(x, y, size, scratch), spanDeg, scratch);
    }

    private void fill(int first) {
        double half = spanDeg / 2;
        int from = windowBegins(first, half);
        int to = from;
        for (int i = first; i < filled; i++) {
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
        filled = first;
    }

    /** A point at or shortly before the window of one. */
    private int windowBegins(int i, double half) {
        double middle = Math.max(x[0] + half, Math.min(x[i], x[size - 1] - half));
        int place = Arrays.binarySearch(x, 0, i, middle - half);
        return Math.max(0, (place >= 0 ? place : -place - 1) - 1);
    }

    double slope(int i) {
        fillTo(i);
        return slope[i];
    }

    double value(int i) {
        fillTo(i);
        return value[i];
    }

    private void fillTo(int i) {
        if (i < filled) {
            fill(Math.max(0, Math.min(i, filled - BLOCK)));
        }
    }

    /** The slopes; only those from a point on are there. */
    double[] slopes(int from) {
        fillTo(from);
        return slope;
    }

    double[] values() {
        fillTo(0);
        return value;
    }

    double spanDeg() {
        return spanDeg;
    }

    /** Prefix sums about the last point, so that large angles cost no digits where they matter. */
    static final class Sums {
        private static final int WIDTH = 4;

        /** Up to each point the sums of x, y, x squared and x y, side by side as they are read. */
        private final double[] sums;

        private final double x0;
        private final double y0;
        private double slope;
        private double meanX;
        private double meanY;

        Sums(double[] x, double[] y, int size, Scratch scratch) {
            sums = scratch.doubles(WIDTH * (size + 1));
            Arrays.fill(sums, 0, WIDTH, 0);
            x0 = size == 0 ? 0 : x[size - 1];
            y0 = size == 0 ? 0 : y[size - 1];
            for (int i = 0; i < size; i++) {
                double u = x[i] - x0;
                double v = y[i] - y0;
                int at = WIDTH * i;
                sums[at + 4] = sums[at] + u;
                sums[at + 5] = sums[at + 1] + v;
                sums[at + 6] = sums[at + 2] + u * u;
                sums[at + 7] = sums[at + 3] + u * v;
            }
        }

        /** Fits the points from inclusive to exclusive; there is at least one. */
        void fit(int from, int to) {
            double n = to - from;
            int a = WIDTH * from;
            int b = WIDTH * to;
            double mx = (sums[b] - sums[a]) / n;
            double my = (sums[b + 1] - sums[a + 1]) / n;
            double xx = sums[b + 2] - sums[a + 2] - n * mx * mx;
            double xy = sums[b + 3] - sums[a + 3] - n * mx * my;
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
