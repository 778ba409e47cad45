package org.tautlog.line;

import org.apache.commons.rng.UniformRandomProvider;

/** Slow wandering of the friction, as washing, temperature and oil film change over hours. */
final class Drift {
    private static final int ENGINES_BETWEEN_MARKS = 32;
    private static final double WIDTH = 0.005;

    private Drift() {}

    /** Friction added for one engine: straight between marks that chance set. */
    static double friction(int engine, long seed) {
        int mark = engine / ENGINES_BETWEEN_MARKS;
        double share = (double) (engine % ENGINES_BETWEEN_MARKS) / ENGINES_BETWEEN_MARKS;
        return at(mark, seed) * (1 - share) + at(mark + 1, seed) * share;
    }

    private static double at(int mark, long seed) {
        UniformRandomProvider random = Seeds.stream(seed, Seeds.Use.DRIFT, mark);
        return WIDTH * (random.nextDouble() - 0.5);
    }
}
