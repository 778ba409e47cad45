package org.tautlog.review.evidence;

/** How a bolt position stands after all its attempts and decisions, gravest first. */
public enum PositionStanding {
    /** The last attempt does not conform. */
    NONCONFORMING("nonconforming"),
    /** The specification states this position or other engines have it, this one has no recording: suspect, not good. */
    MISSING("no recording"),
    /** Tightened again past onset without a recorded decision. */
    UNDECIDED_REPEAT("repeat not decided"),
    /** The recording is too poor to judge. */
    UNJUDGED("unjudged"),
    /** A person must look. */
    REVIEW("review"),
    /** A person's recorded decision covers what the verdict leaves open. */
    DECIDED("decided"),
    /** Nothing speaks against it. */
    CONFORMING("conforming");

    private final String word;

    PositionStanding(String word) {
        this.word = word;
    }

    /** {@return the standing in words} */
    public String word() {
        return word;
    }
}
