package org.tautlog.spc.chart;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * How a chart of single values is made.
 *
 * @param spread how the standard deviation is estimated
 * @param width distance of the limits from the centre line in standard deviations, above 0
 * @param rules the run rules switched on
 * @param neighbours what to do where neighbouring values resemble each other
 * @param phaseOne how points beyond the limits are left out of them
 */
public record IndividualsOptions(
        IndividualsSpread spread, double width, Set<RunRule> rules, Neighbours neighbours, PhaseOneOptions phaseOne) {
    /** What to do where neighbouring values resemble each other. */
    public enum Neighbours {
        /** Say it and widen the limits where the lag-1 autocorrelation lies above its noise bound. */
        WIDEN,
        /** Keep the limits as if values were independent. */
        IGNORE
    }

    /** Checks the arguments and copies the set. */
    public IndividualsOptions {
        if (!(width > 0 && width < 100))
            throw new IllegalArgumentException("width is " + width + "; it must lie between 0 and 100 sigma");
        rules = rules.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(rules));
    }

    /** {@return mean moving range, three sigma, points beyond the limits only, widened where neighbours resemble} */
    public static IndividualsOptions withDefaults() {
        return new IndividualsOptions(
                IndividualsSpread.MEAN_MOVING_RANGE,
                3,
                RunRule.limitsOnly(),
                Neighbours.WIDEN,
                PhaseOneOptions.withDefaults());
    }

    /**
     * {@return these options with other run rules}
     *
     * @param other the rules switched on
     */
    public IndividualsOptions withRules(Set<RunRule> other) {
        return new IndividualsOptions(spread, width, other, neighbours, phaseOne);
    }

    /**
     * {@return these options with another spread estimate}
     *
     * @param other the estimate
     */
    public IndividualsOptions withSpread(IndividualsSpread other) {
        return new IndividualsOptions(other, width, rules, neighbours, phaseOne);
    }

    /**
     * {@return these options with another treatment of neighbours}
     *
     * @param other the treatment
     */
    public IndividualsOptions withNeighbours(Neighbours other) {
        return new IndividualsOptions(spread, width, rules, other, phaseOne);
    }

    /**
     * {@return these options with another phase 1}
     *
     * @param other how points are left out
     */
    public IndividualsOptions withPhaseOne(PhaseOneOptions other) {
        return new IndividualsOptions(spread, width, rules, neighbours, other);
    }
}
