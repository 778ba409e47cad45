package org.tautlog.trace;

import java.util.List;
import java.util.Objects;

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
        if (serial.isBlank()) {
            throw new IllegalArgumentException("serial is blank; a measurement must name its engine or part");
        }
        Objects.requireNonNull(bolt, "bolt");
        if (attempt < 1) {
            throw new IllegalArgumentException("attempt is " + attempt + "; attempts count from 1");
        }
        points = List.copyOf(points);
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).angleDeg() > points.get(i - 1).angleDeg())) {
                throw new IllegalArgumentException("angleDeg " + points.get(i).angleDeg() + " follows "
                        + points.get(i - 1).angleDeg() + "; angles must rise");
            }
        }
    }
}
