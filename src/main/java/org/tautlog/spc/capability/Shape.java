package org.tautlog.spc.capability;

/** What distribution a capability study rests on. */
public enum Shape {
    /** Normal: the test of normality did not reject it. */
    NORMAL,
    /** Logarithms are normal. */
    LOGNORMAL,
    /** Two-parameter Weibull, by maximum likelihood. */
    WEIBULL,
    /** Largest-extreme-value (Gumbel), by maximum likelihood. */
    GUMBEL,
    /** No form fits and there are values enough to read the percentiles from them. */
    EMPIRICAL
}
