package org.tautlog.intake;

/**
 * What became of everything of one kind that was met; nothing vanishes: in = kept + rejected + ignored.
 *
 * @param in how many were met
 * @param kept how many were used
 * @param rejected how many could not be used; each is named by a problem
 * @param ignored how many were left unread on purpose
 */
public record Tally(long in, long kept, long rejected, long ignored) {
    public Tally {
        if (in != kept + rejected + ignored || kept < 0 || rejected < 0 || ignored < 0) {
            throw new IllegalArgumentException(in + " met, but " + kept + " kept, " + rejected + " rejected and "
                    + ignored + " ignored; each must be one of them");
        }
    }
}
