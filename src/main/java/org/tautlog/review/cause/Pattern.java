package org.tautlog.review.cause;

/** In which streams something differs: a cue apart from the curves, as some causes follow the tool and others the bolts. */
public enum Pattern {
    /** One spindle from some tightening on, apart from its station's others and whatever the lot. */
    ONE_SPINDLE("on one spindle alone"),
    /** All spindles of a station, or of the shift, alike. */
    ALL_SPINDLES("on all spindles alike"),
    /** The station has no other spindle, so that nothing tells tool and parts apart. */
    ONLY_SPINDLE("on the only spindle of its station"),
    /** One bolt lot, within all spindles that turned it. */
    ONE_LOT("with one bolt lot"),
    /** One tightening. */
    ONE_TIGHTENING("in one tightening alone");

    private final String title;

    Pattern(String title) {
        this.title = title;
    }

    /** {@return whether a spindle that is not concerned stands beside, to compare with} */
    boolean hasNeighbour() {
        return this == ONE_SPINDLE || this == ONE_TIGHTENING;
    }

    /** {@return the pattern in words} */
    public String title() {
        return title;
    }
}
