package org.tautlog.joint.window;

/**
 * Where one bolt position lies, seen from above on the head. Both lengths count from one datum of the plant's choice.
 *
 * @param bolt the bolt position
 * @param xMm to the right, mm; finite
 * @param yMm away from the viewer, up on the plan, mm; finite
 */
public record BoltPlace(String bolt, double xMm, double yMm) {
    /** How near two bolts can be; nearer, one length was typed twice. */
    public static final double NEAREST_MM = 1;

    public BoltPlace {
        if (!Double.isFinite(xMm) || !Double.isFinite(yMm)) {
            throw new IllegalArgumentException(
                    "xMm, yMm of bolt '" + bolt + "' are " + xMm + ", " + yMm + "; a place is finite, mm");
        }
    }

    /**
     * How far another bolt position is.
     *
     * @param other the other place
     * @return from middle to middle, mm
     */
    public double distanceMm(BoltPlace other) {
        return Math.hypot(xMm - other.xMm, yMm - other.yMm);
    }
}
