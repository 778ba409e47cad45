package org.tautlog.spc.chart;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * One plotted point with the limits that hold for it.
 *
 * @param index place in the series, from 0
 * @param value what is plotted, in the chart's units
 * @param lower lower control limit
 * @param centre centre line
 * @param upper upper control limit
 * @param n how many measurements the point stands for
 * @param broken the run rules whose pattern it completes, in the rules' order; empty when it gives no signal
 */
public record ChartPoint(
        int index, double value, double lower, double centre, double upper, int n, Set<RunRule> broken) {
    /** Checks the arguments and copies the set. */
    public ChartPoint {
        for (double x : new double[] {value, lower, centre, upper})
            if (!Double.isFinite(x))
                throw new IllegalArgumentException("point " + index + " holds " + x + "; it must be a finite number");
        broken = broken.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(broken));
    }

    /** {@return whether the point lies beyond a limit, on a limit not counting} */
    public boolean outside() {
        return value > upper || value < lower;
    }

    /** {@return whether any switched-on rule is broken here} */
    public boolean signals() {
        return !broken.isEmpty();
    }
}
