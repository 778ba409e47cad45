package org.tautlog.line;

/**
 * When a tool's recorder takes a sample, and how finely it writes the torque.
 *
 * @param by what it goes by
 * @param step degrees that the angle moves from sample to sample, forwards or back, or seconds that pass, turning or not
 * @param torqueStepNm the recorder's torque resolution, N·m
 */
record Sampling(By by, double step, double torqueStepNm) {
    /** What a recorder goes by. */
    enum By {
        ANGLE,
        TIME
    }

    /** Each half degree, or each two milliseconds. */
    static Sampling usual(By by) {
        return new Sampling(by, by == By.ANGLE ? 0.5 : 0.002, 0.01);
    }

    /** A step in time, s, at which nothing that is recorded gets lost. */
    double noLongerThan(double seconds) {
        return by == By.TIME ? Math.min(seconds, step) : seconds;
    }
}
