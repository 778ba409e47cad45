package org.tautlog.spc.capability;

import org.tautlog.spc.Interval;
import org.tautlog.spc.Proportion;

/**
 * The share of values beyond the limits: as counted, and as the distribution foretells it.
 *
 * @param counted the share counted, with exact binomial bounds
 * @param foretold the share foretold by the distribution, from 0 to 1
 * @param foretoldBounds its confidence bounds; for the normal exact for one limit, conservative for two
 * @param shape the distribution
 */
public record FractionOutside(Proportion counted, double foretold, Interval foretoldBounds, Shape shape) {}
