package org.tautlog.line;

/** Torque in the thread that clamps nothing: what the nut meets besides the free thread. */
interface Obstacle {
    /**
     * The torque it takes to turn past it.
     *
     * @param headDeg how far the head has turned since the start, deg
     * @return N·m, at least 0
     */
    double torqueNm(double headDeg);

    /** A clean thread. */
    static Obstacle none() {
        return headDeg -> 0;
    }

    /** A burr that is turned over within some degrees. */
    static Obstacle burr(double atDeg, double heightNm, double halfWidthDeg) {
        return headDeg -> {
            double away = (headDeg - atDeg) / halfWidthDeg;
            return heightNm * Math.max(0, 1 - away * away);
        };
    }

    /**
     * A nut that started across the thread: from some angle on each turn is harder than the one before, in jerks.
     *
     * @param fromDeg where it starts to bind
     * @param rateNmPerDeg how fast the torque rises
     * @param jerkNm height of the jerks
     */
    static Obstacle crossedThread(double fromDeg, double rateNmPerDeg, double jerkNm) {
        return headDeg -> {
            double past = headDeg - fromDeg;
            if (past <= 0) {
                return 0;
            }
            double wave = Math.sin(Math.toRadians(past * 5.3)) + 0.6 * Math.sin(Math.toRadians(past * 13.7 + 40));
            return Math.max(0, rateNmPerDeg * past + jerkNm * wave * Math.min(1, past / 60));
        };
    }
}
