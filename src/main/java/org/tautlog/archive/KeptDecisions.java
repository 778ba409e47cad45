package org.tautlog.archive;

import java.util.ArrayList;
import java.util.List;
import org.tautlog.archive.ledger.Ledger;
import org.tautlog.archive.ledger.LedgerEntry;
import org.tautlog.archive.ledger.LedgerEvent.Decided;
import org.tautlog.problem.Outcome;

/** The decisions of a chain: a later one on the same subject supersedes. */
final class KeptDecisions {
    private KeptDecisions() {}

    /** Those about one engine; about all engines where the serial is empty. */
    static Outcome<List<KeptDecision>> of(Ledger.Reading ledger, String serial) {
        var decided = new ArrayList<KeptDecision>();
        for (var entry : ledger.entries()) {
            if (entry.event() instanceof Decided event
                    && (serial.isEmpty() || event.decision().serial().equals(serial))) {
                decided.replaceAll(
                        earlier -> earlier.decision().sameSubject(event.decision()) ? superseded(earlier) : earlier);
                decided.add(kept(entry, event));
            }
        }
        return Outcome.of(List.copyOf(decided), ledger.problems());
    }

    private static KeptDecision kept(LedgerEntry entry, Decided event) {
        return new KeptDecision(entry.number(), entry.time(), event.decision(), true, entry.previous(), entry.sha256());
    }

    private static KeptDecision superseded(KeptDecision earlier) {
        return new KeptDecision(
                earlier.entry(), earlier.time(), earlier.decision(), false, earlier.previous(), earlier.sha256());
    }
}
