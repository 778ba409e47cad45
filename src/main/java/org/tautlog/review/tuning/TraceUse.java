package org.tautlog.review.tuning;

/** Whether a trace can be used for tuning, and why not. */
public enum TraceUse {
    /** It is used. */
    USED("used"),
    /** Nothing was measured on it. */
    NO_OUTCOME("no clamp load was measured"),
    /** Another trace came before it under the same serial, bolt and attempt. */
    SECOND_TRACE("another trace came first under the same serial, bolt and attempt"),
    /** Its recording cannot be judged: cut short, saturated, too coarse. */
    UNUSABLE_RECORDING("the recording is unusable: cut short, saturated, or with too few samples"),
    /** The angles of the measurement are not those of the recording. */
    OTHER_AXIS("the angles measured at lie outside the recording; they must be on the recording's own axis"),
    /** Too few loads were measured for a line. */
    TOO_FEW_POINTS("fewer than " + LoadOnset.LEAST_POINTS + " loads between 20 and 60 % of the highest"),
    /** The lower part of the load is no straight line. */
    NO_STRAIGHT_PART("the lower loads lie on no straight line"),
    /** The load follows its line to the end: there is no onset to tune by. */
    NO_ONSET("the load never falls behind its line by the offset at two angles in a row"),
    /** The curve itself has no elastic line, so that no threshold reads an onset. */
    NO_ELASTIC_LINE("the curve has no elastic line");

    private final String words;

    TraceUse(String words) {
        this.words = words;
    }

    /** {@return the reason in words} */
    public String words() {
        return words;
    }
}
