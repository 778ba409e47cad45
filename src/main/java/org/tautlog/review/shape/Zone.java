package org.tautlog.review.shape;

/** The parts of a tightening's curve. */
public enum Zone {
    /** Before the elastic origin: free turning, and parts that draw together. */
    RUN_DOWN("run-down"),
    /** From the elastic origin to the snug point. */
    SNUG("snug stage"),
    /** From the snug point to the yield onset, or to the stop where there is none. */
    ELASTIC("elastic zone"),
    /** Past the yield onset. */
    PAST_ONSET("past the onset"),
    /** The last degrees before the stop. */
    END("end");

    private final String title;

    Zone(String title) {
        this.title = title;
    }

    /** {@return its name in the trade's words} */
    public String title() {
        return title;
    }
}
