package org.tautlog.spc.count;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.chart.RunRule;

/**
 * How a chart of counts is made.
 *
 * @param width distance of the limits from the centre line in standard deviations, above 0
 * @param rules the run rules switched on
 * @param neighbours what Laney's charts do where neighbouring points resemble each other; the others know chance alone
 * @param phaseOne how points beyond the limits are left out of them
 */
public record CountOptions(
        double width, Set<RunRule> rules, IndividualsOptions.Neighbours neighbours, PhaseOneOptions phaseOne) {
    /** Checks the width and copies the rules. */
    public CountOptions {
        if (!(width > 0 && width < 100))
            throw new IllegalArgumentException("width is " + width + "; it must lie between 0 and 100 sigma");
        rules = rules.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(rules));
    }

    /** {@return three sigma, points beyond the limits only, left out by the usual rules} */
    public static CountOptions withDefaults() {
        return new CountOptions(
                3, RunRule.limitsOnly(), IndividualsOptions.Neighbours.WIDEN, PhaseOneOptions.withDefaults());
    }

    /**
     * {@return these options with another phase 1}
     *
     * @param other how points are left out
     */
    public CountOptions withPhaseOne(PhaseOneOptions other) {
        return new CountOptions(width, rules, neighbours, other);
    }
}
