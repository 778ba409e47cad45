package org.tautlog.spc.capability;

import java.util.Locale;

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
    EMPIRICAL;

    /** {@return the name within a sentence: those called after people keep their capital letter} */
    public String words() {
        var small = name().toLowerCase(Locale.ROOT);
        return this == WEIBULL || this == GUMBEL ? name().charAt(0) + small.substring(1) : small;
    }
}
