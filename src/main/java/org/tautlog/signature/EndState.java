package org.tautlog.signature;

import java.util.Locale;

/** The state of the bolt at the end of the turn as its curve shows it, in three grades of the least gradient ratio. */
public enum EndState {
    /** The gradient never fell below the elastic ratio. */
    ELASTIC,
    /** The gradient left the elastic line; whether the bolt yields cannot be told. */
    ONSET_ZONE,
    /** The gradient fell to the plastic ratio or below. */
    PLASTIC,
    /** The curve does not say. */
    UNKNOWN;

    /** {@return the word of this state in lower case with hyphens} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
