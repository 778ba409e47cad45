package org.tautlog.judge;

import java.util.Locale;

/** The word on one tightening. */
public enum Verdict {
    /** Nothing speaks against it. */
    CONFORMING,
    /** A person must look. */
    REVIEW,
    /** The data is too poor to judge; never silently passed. */
    UNJUDGED,
    /** It does not conform. */
    NONCONFORMING;

    /** {@return the word in lower case} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
