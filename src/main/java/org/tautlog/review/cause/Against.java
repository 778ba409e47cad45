package org.tautlog.review.cause;

/** What something was held against to see that it differs. */
public enum Against {
    /** The specification: most of a spindle's tightenings bear a fault of their own. */
    SPECIFICATION("what the specification asks, in most of its first attempts"),
    /** The same spindles before a step within the shift. */
    BEFORE("the time before, within the shift"),
    /** The station's other spindles, over the whole shift. */
    OTHER_SPINDLES("the station's other spindles, all shift long"),
    /** The bolts of all other lots. */
    OTHER_LOTS("bolts of other lots"),
    /** The station's other tightenings. */
    OTHER_TIGHTENINGS("the station's other tightenings"),
    /** An earlier shift. */
    EARLIER_SHIFT("the earlier shift"),
    /** What the model foretells for the joint that the specification states. */
    STATED_JOINT("what the stated joint lets expect");

    private final String title;

    Against(String title) {
        this.title = title;
    }

    /** {@return it in words that follow "against"} */
    public String title() {
        return title;
    }
}
