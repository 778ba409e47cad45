package org.tautlog.spc.capability;

import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Proportion;

/**
 * The share of values beyond the limits: as counted among all of them, and as a distribution foretells it.
 *
 * @param counted the share counted, with exact binomial bounds, strays and all
 * @param foretold the share foretold, or why none is
 */
public record FractionOutside(Proportion counted, Answer<Foretold> foretold) {
    /**
     * The share that a distribution foretells.
     *
     * @param share the share, from 0 to 1
     * @param bounds its confidence bounds; for the normal exact for one limit, conservative for two
     * @param shape the distribution
     */
    public record Foretold(double share, Interval bounds, Shape shape) {}
}
