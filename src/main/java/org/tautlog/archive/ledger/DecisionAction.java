package org.tautlog.archive.ledger;

import java.util.Locale;
import java.util.Optional;

/** What a person may decide about a tightening, or about a whole engine. */
public enum DecisionAction {
    /** It stays as it is. */
    ACCEPT,
    /** The bolt is taken out and a new one tightened in its place. */
    RE_TIGHTEN,
    /** The part is replaced. */
    REPLACE,
    /** The engine is held back. */
    QUARANTINE,
    /** The engine is held back no longer. */
    RELEASE;

    /** {@return the word of this action in lower case with hyphens, for example {@code re-tighten}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Finds the action of a word.
     *
     * @param word for example {@code re-tighten}
     * @return the action, or empty where there is none of that word
     */
    public static Optional<DecisionAction> parse(String word) {
        for (var action : values()) {
            if (action.word().equals(word)) {
                return Optional.of(action);
            }
        }
        return Optional.empty();
    }
}
