package org.tautlog.judge;

import java.util.List;
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

    /**
     * The verdict that findings lead to: that of the gravest one.
     *
     * @param findings what was found, in any order
     * @return the verdict; conforming where there is nothing but notes
     */
    public static Verdict of(List<Finding> findings) {
        var gravest = CONFORMING;
        for (var finding : findings) {
            var verdict = switch (finding.severity()) {
                case NOTE -> CONFORMING;
                case REVIEW -> REVIEW;
                case UNJUDGED -> UNJUDGED;
                case NONCONFORMING -> NONCONFORMING;
            };
            gravest = verdict.compareTo(gravest) > 0 ? verdict : gravest;
        }
        return gravest;
    }

    /** {@return the word in lower case} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
