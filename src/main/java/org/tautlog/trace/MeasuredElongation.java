package org.tautlog.trace;

import java.util.List;

/**
 * Elongation of one bolt while it was tightened, from end to end, as ultrasound or a gauge rod measured it.
 *
 * @param serial identifier of the engine or part; never blank
 * @param bolt the bolt position; may be empty
 * @param attempt 1, 2, ... for the same bolt position
 * @param points what was measured, in rising order of angle
 */
public record MeasuredElongation(String serial, String bolt, int attempt, List<Point> points) {
    /**
     * The elongation at one angle.
     *
     * @param angleDeg angle on the axis of the tightening's own recording, deg
     * @param elongationUm length less that of the loose bolt, um
     */
    public record Point(double angleDeg, double elongationUm) {
        public Point {
            if (!Double.isFinite(angleDeg) || !Double.isFinite(elongationUm)) {
                throw new IllegalArgumentException(
                        "angleDeg is " + angleDeg + ", elongationUm is " + elongationUm + "; both must be finite");
            }
        }
    }

    public MeasuredElongation {
        points = List.copyOf(points);
        Measurement.check(
                serial,
                bolt,
                attempt,
                points.stream().mapToDouble(Point::angleDeg).toArray());
    }
}
