package org.tautlog.signature;

import java.util.Arrays;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.trace.Curve;

/** The bolt's torque at even steps of angle, so that curves can be held against each other point by point. */
public final class TorqueOverTurn {
    /** Least width of a cell, deg: as features are read. */
    private static final double CELL_DEG = 0.25;

    private TorqueOverTurn() {}

    /**
     * Mean torque about each of some evenly spaced angles, up to the stop. What the drive does while it stands, runs back
     * and loads up again is left out as it is for features; the torque across such a gap is the straight line over it.
     *
     * <pre>
     * T(i) = integral of the torque from x(i) - step / 2 to x(i) + step / 2, over step,   x(i) = from + i step
     * </pre>
     *
     * @param curve the samples
     * @param method snug torque and turn aimed at; only the snug torque matters here
     * @param fromDeg the first angle, deg, on the recording's own axis
     * @param stepDeg distance of the angles, deg, above 0
     * @param most how many angles at most, at least 1
     * @return the torques, N·m; NaN before the recording begins; ends with the last angle that the recording covers whole
     */
    public static double[] at(Curve curve, TighteningMethod method, double fromDeg, double stepDeg, int most) {
        if (!(stepDeg > 0) || most < 1) {
            throw new IllegalArgumentException(
                    "stepDeg is " + stepDeg + ", most is " + most + "; a step is above 0 deg, most at least 1");
        }
        var scratch = new Scratch();
        var cells =
                Walk.of(curve, Stop.of(curve), method.snugTorqueNm(), scratch).cells(CELL_DEG, scratch);
        var area = areas(cells);
        double first = cells.size() == 0 ? 0 : cells.angleDeg(0);
        double last = cells.size() == 0 ? first : cells.angleDeg(cells.size() - 1);
        var torqueNm = new double[most];
        int n = 0;
        while (n < most && fromDeg + (n + 0.5) * stepDeg <= last) {
            double left = fromDeg + (n - 0.5) * stepDeg;
            torqueNm[n] =
                    left < first ? Double.NaN : (area(cells, area, left + stepDeg) - area(cells, area, left)) / stepDeg;
            n++;
        }
        return Arrays.copyOf(torqueNm, n);
    }

    private static double[] areas(Cells cells) {
        var area = new double[cells.size()];
        for (int i = 1; i < area.length; i++) {
            double width = cells.angleDeg(i) - cells.angleDeg(i - 1);
            area[i] = area[i - 1] + width * (cells.torqueNm(i) + cells.torqueNm(i - 1)) / 2;
        }
        return area;
    }

    private static double area(Cells cells, double[] area, double deg) {
        int next = Math.max(1, Math.min(cells.size() - 1, cells.firstFrom(deg)));
        double past = deg - cells.angleDeg(next - 1);
        double slope = cells.slope(next - 1, next + 1);
        return area[next - 1] + past * (cells.torqueNm(next - 1) + slope * past / 2);
    }
}
