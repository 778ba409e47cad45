package org.tautlog.archive;

import java.util.Objects;
import org.tautlog.archive.ledger.Seal;

/**
 * What became of a seal.
 *
 * @param file the file of its text
 * @param seal the state that was sealed
 * @param onChain whether the chain still holds that state: everything up to it is as it was
 * @param signed whether its signature was found to be that of the key given
 */
public record SealCheck(String file, Seal seal, boolean onChain, Signed signed) {
    public SealCheck {
        Objects.requireNonNull(seal, "seal");
    }

    /** What is known of a signature. */
    public enum Signed {
        /** It is the key's. */
        BY_THE_KEY,
        /** It is not the key's, or the text was altered after it was signed. */
        NOT_BY_THE_KEY,
        /** No key was given to check it. */
        NOT_CHECKED
    }
}
