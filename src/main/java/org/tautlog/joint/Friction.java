package org.tautlog.joint;

/**
 * The two friction coefficients of a tightening.
 *
 * @param threadMu in the thread; from 0 to 1
 * @param underHeadMu under the turned head; from 0 to 1
 */
public record Friction(double threadMu, double underHeadMu) {
    /** Checks both. */
    public Friction {
        Require.within("threadMu", threadMu, 0, 1, "");
        Require.within("underHeadMu", underHeadMu, 0, 1, "");
    }

    /**
     * The same coefficient in both places.
     *
     * @param mu from 0 to 1
     * @return the friction
     */
    public static Friction both(double mu) {
        return new Friction(mu, mu);
    }
}
