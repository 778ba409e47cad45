package org.tautlog.signature;

import java.util.Arrays;

/** Mean angle and mean torque of small steps of turning; angles rise strictly. */
final class Cells {
    private static final int MOST_DIFFERENCES = 256;

    private final double[] angleDeg;
    private final double[] torqueNm;
    private final int size;
    private final MovingLine.Sums sums;
    private final Scratch scratch;

    Cells(double[] angleDeg, double[] torqueNm, int size, Scratch scratch) {
        this.angleDeg = angleDeg;
        this.torqueNm = torqueNm;
        this.size = size;
        this.scratch = scratch;
        this.sums = new MovingLine.Sums(angleDeg, torqueNm, size, scratch);
    }

    int size() {
        return size;
    }

    double angleDeg(int i) {
        return angleDeg[i];
    }

    double torqueNm(int i) {
        return torqueNm[i];
    }

    Scratch scratch() {
        return scratch;
    }

    double[] angles() {
        return angleDeg;
    }

    double[] torques() {
        return torqueNm;
    }

    /** Index of the first cell at or past an angle, or the size. */
    int firstFrom(double deg) {
        int place = Arrays.binarySearch(angleDeg, 0, size, deg);
        return place >= 0 ? place : -place - 1;
    }

    /** Mean slope of some cells, N·m/deg; 0 where they are fewer than two. */
    double slope(int from, int to) {
        return to - from < 2 ? 0 : (torqueNm[to - 1] - torqueNm[from]) / (angleDeg[to - 1] - angleDeg[from]);
    }

    /** Line through some cells, at least one; its sums stand about the last of them, and it is not fitted again. */
    MovingLine.Sums fitted(int from, int to) {
        int mark = scratch.mark();
        var line = new MovingLine.Sums(
                Arrays.copyOfRange(angleDeg, from, to), Arrays.copyOfRange(torqueNm, from, to), to - from, scratch);
        line.fit(0, to - from);
        scratch.backTo(mark);
        return line;
    }

    MovingLine line(double spanDeg) {
        return new MovingLine(angleDeg, size, sums, spanDeg, scratch);
    }

    /** Usual distance of neighbouring cells from one on, deg. */
    double stepDeg(int from) {
        int start = Math.min(from, Math.max(0, size - 2));
        if (size - start < 2) {
            return 0;
        }
        int all = size - start - 1;
        int stride = Robust.step(all);
        var steps = new double[(all + stride - 1) / stride];
        for (int i = 0, j = start; i < steps.length; i++, j += stride) {
            steps[i] = angleDeg[j + 1] - angleDeg[j];
        }
        return Robust.percentile(steps, 0.5);
    }

    double noiseNm(int from) {
        return noiseNm(angleDeg, torqueNm, Math.min(from, Math.max(0, size - 12)), size);
    }

    /**
     * Robust noise from how far each point lies from the line between its neighbours, which a slope does not disturb.
     *
     * <pre>
     * e(i) = (y(i) - (1 - w) y(i-1) - w y(i+1)) / sqrt(1 + w^2 + (1 - w)^2),  w = (x(i) - x(i-1)) / (x(i+1) - x(i-1))
     * sigma = 1.4826 median |e|
     * </pre>
     *
     * Source: common practice takes first differences; second ones are the same idea without the slope.
     */
    static double noiseNm(double[] x, double[] y, int from, int to) {
        int n = to - from - 2;
        if (n < 3) {
            return 0;
        }
        int stride = Math.max(1, (n + MOST_DIFFERENCES - 1) / MOST_DIFFERENCES);
        var away = new double[(n + stride - 1) / stride];
        for (int k = 0, i = from + 1; k < away.length; k++, i += stride) {
            double gap = x[i + 1] - x[i - 1];
            double w = gap > 0 ? (x[i] - x[i - 1]) / gap : 0.5;
            away[k] = (y[i] - (1 - w) * y[i - 1] - w * y[i + 1]) / Math.sqrt(1 + w * w + (1 - w) * (1 - w));
        }
        return Robust.spreadAbout(away, 0);
    }
}
