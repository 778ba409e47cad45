package org.tautlog.archive;

import java.util.List;
import org.tautlog.problem.Problem;

/**
 * What tidying did.
 *
 * @param entered batches entered into the ledger whose writer had died before it could
 * @param cleared what killed or failed writers had left, now deleted, and batches whose rows another took over
 * @param merged how many batches were merged
 * @param into how many batches they became
 * @param problems what could not be tidied
 */
public record Tidied(int entered, List<String> cleared, int merged, int into, List<Problem> problems) {
    public Tidied {
        cleared = List.copyOf(cleared);
        problems = List.copyOf(problems);
    }
}
