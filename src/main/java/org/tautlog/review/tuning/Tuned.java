package org.tautlog.review.tuning;

import java.util.Objects;
import org.tautlog.spc.Interval;

/**
 * A threshold that was tuned.
 *
 * @param standing the threshold with the least median error, and how it reads the traces it was tuned on
 * @param interval where the threshold lies for other traces of the same kind: bootstrap over traces
 * @param lowest lowest threshold tried
 * @param highest highest threshold tried
 */
public record Tuned(Standing standing, Interval interval, double lowest, double highest) {
    private static final double WIDEST_SHARE = 0.5;

    public Tuned {
        Objects.requireNonNull(standing, "standing");
        Objects.requireNonNull(interval, "interval");
    }

    /** {@return whether the interval covers half of all that was tried, or more: the traces tell nothing of the threshold} */
    public boolean tellsNothing() {
        return interval.upper() - interval.lower() >= WIDEST_SHARE * (highest - lowest);
    }

    /** {@return whether the least error lies at an end of what was tried, so that a better threshold may lie beyond} */
    public boolean atEnd() {
        return standing.threshold() == lowest || standing.threshold() == highest;
    }
}
