package org.tautlog.line;

/** Torque that turns a bolt and clamps nothing: thread and head run out of true, so it swings while they turn. */
interface FreeTurning {
    /**
     * The torque at one place.
     *
     * @param headDeg how far the head has turned since the start, deg
     * @param loadN preload there, N
     * @return N·m
     */
    double torqueNm(double headDeg, double loadN);

    /**
     * A swing of 8 % once a turn and one of 4 % at 3.1 a turn, the same under any load.
     *
     * @param meanNm the torque without them, N·m
     * @param phaseDeg where in a turn it is highest, deg
     */
    static FreeTurning swinging(double meanNm, double phaseDeg) {
        return (headDeg, loadN) -> {
            double turn = Math.toRadians(headDeg - phaseDeg);
            return meanNm * (1 + 0.08 * Math.cos(turn) + 0.04 * Math.cos(3.1 * turn));
        };
    }
}
