package org.tautlog.review.cause;

import java.util.Objects;
import org.tautlog.review.stream.Cue;

/**
 * One cue held against one cause.
 *
 * @param cue which
 * @param seen how far it moved, in its unit
 * @param foretold how far the cause, at the size that fits best, would move it, in its unit
 * @param spreads how far it moved, in ordinary spreads of single tightenings
 * @param agrees whether it moved as foretold; else it contradicts
 */
public record Clue(Cue cue, double seen, double foretold, double spreads, boolean agrees) {
    public Clue {
        Objects.requireNonNull(cue, "cue");
    }

    /** How far the cause would move it, in ordinary spreads of single tightenings, either way. */
    double foretoldSpreads() {
        return Math.abs(foretold * spreads / seen);
    }
}
