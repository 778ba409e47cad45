package org.tautlog.spc.chart;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * How charts of subgroups are made.
 *
 * @param spread what tells the spread within subgroups
 * @param width distance of the limits from the centre line in standard deviations, above 0
 * @param rules the run rules that watch the means; the spread chart is watched for its limits only
 * @param neighbours what to do where neighbouring values resemble each other
 * @param phaseOne how subgroups beyond the limits are left out of them
 */
public record SubgroupOptions(
        SubgroupSpread spread,
        double width,
        Set<RunRule> rules,
        IndividualsOptions.Neighbours neighbours,
        PhaseOneOptions phaseOne) {
    /** Checks the width and copies the rules. */
    public SubgroupOptions {
        if (!(width > 0 && width < 100))
            throw new IllegalArgumentException("width is " + width + "; it must lie between 0 and 100 sigma");
        rules = rules.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(rules));
    }

    /** {@return ranges, three sigma, points beyond the limits only, widened where neighbours resemble} */
    public static SubgroupOptions withDefaults() {
        return new SubgroupOptions(
                SubgroupSpread.RANGE,
                3,
                RunRule.limitsOnly(),
                IndividualsOptions.Neighbours.WIDEN,
                PhaseOneOptions.withDefaults());
    }

    /**
     * {@return these options with another spread}
     *
     * @param other what tells the spread
     */
    public SubgroupOptions withSpread(SubgroupSpread other) {
        return new SubgroupOptions(other, width, rules, neighbours, phaseOne);
    }

    /**
     * {@return these options with other run rules}
     *
     * @param other the rules switched on
     */
    public SubgroupOptions withRules(Set<RunRule> other) {
        return new SubgroupOptions(spread, width, other, neighbours, phaseOne);
    }

    /**
     * {@return these options with another phase 1}
     *
     * @param other how subgroups are left out
     */
    public SubgroupOptions withPhaseOne(PhaseOneOptions other) {
        return new SubgroupOptions(spread, width, rules, neighbours, other);
    }

    /**
     * {@return these options with another treatment of neighbours}
     *
     * @param other the treatment
     */
    public SubgroupOptions withNeighbours(IndividualsOptions.Neighbours other) {
        return new SubgroupOptions(spread, width, rules, other, phaseOne);
    }
}
