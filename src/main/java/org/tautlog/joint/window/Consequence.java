package org.tautlog.joint.window;

import java.util.Locale;

/** What a finding means for the verdict on its tightening, mildest first. */
public enum Consequence {
    /** Worth saying; the verdict does not change. */
    NOTE,
    /** A person must look before the tightening counts as conforming. */
    REVIEW,
    /** The data is too poor to judge; never silently passed. */
    UNJUDGED,
    /** The tightening does not conform. */
    NONCONFORMING;

    /** {@return the word of this consequence in lower case} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
