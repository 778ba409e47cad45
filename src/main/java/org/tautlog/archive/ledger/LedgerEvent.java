package org.tautlog.archive.ledger;

import java.util.List;

/** What an entry records. */
public sealed interface LedgerEvent {
    /**
     * A batch was kept.
     *
     * @param batch its name
     * @param manifestSha256 hash of its manifest's bytes, in lower-case hex
     */
    record BatchKept(String batch, String manifestSha256) implements LedgerEvent {}

    /**
     * Batches were merged into one that holds the same rows.
     *
     * @param batch the name of the one
     * @param manifestSha256 hash of its manifest's bytes, in lower-case hex
     * @param replaced the names of the batches whose place it takes
     */
    record BatchesMerged(String batch, String manifestSha256, List<String> replaced) implements LedgerEvent {
        public BatchesMerged {
            replaced = List.copyOf(replaced);
        }
    }

    /**
     * A person decided.
     *
     * @param decision the decision
     */
    record Decided(Decision decision) implements LedgerEvent {}
}
