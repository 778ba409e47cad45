package org.tautlog.trace;

import java.util.List;

/**
 * Clamp load of one tightening as something other than its torque measured it: a load cell under the head, a bolt with strain
 * gauges.
 *
 * @param serial identifier of the engine or part; never blank
 * @param bolt the bolt position; may be empty
 * @param attempt 1, 2, ... for the same bolt position
 * @param points what was measured, in rising order of angle
 */
public record MeasuredClampLoad(String serial, String bolt, int attempt, List<Point> points) {
    /**
     * The load at one angle.
     *
     * @param angleDeg angle on the axis of the tightening's own recording, deg
     * @param loadKN clamp load, kN
     */
    public record Point(double angleDeg, double loadKN) {
        public Point {
            if (!Double.isFinite(angleDeg) || !Double.isFinite(loadKN)) {
                throw new IllegalArgumentException(
                        "angleDeg is " + angleDeg + ", loadKN is " + loadKN + "; both must be finite");
            }
        }
    }

    public MeasuredClampLoad {
        points = List.copyOf(points);
        Measurement.check(
                serial,
                bolt,
                attempt,
                points.stream().mapToDouble(Point::angleDeg).toArray());
    }
}
