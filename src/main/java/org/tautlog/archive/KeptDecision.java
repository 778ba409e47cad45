package org.tautlog.archive;

import java.time.OffsetDateTime;
import org.tautlog.archive.ledger.Decision;

/**
 * A decision as it stands in the ledger.
 *
 * @param entry number of its entry
 * @param time when it was recorded
 * @param decision the decision
 * @param standing whether no later decision about the same bolt position of the same engine supersedes it
 * @param previous hash of the entry before it
 * @param sha256 hash of its entry
 */
public record KeptDecision(
        int entry, OffsetDateTime time, Decision decision, boolean standing, String previous, String sha256) {}
