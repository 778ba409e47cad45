package org.tautlog.intake;

import java.util.List;
import org.tautlog.problem.Problem;

/**
 * What a reading of logs met and what became of it.
 *
 * @param files files and archive entries; kept are those that gave at least one trace
 * @param lines lines of the files that were read as logs; headings count as kept, blank lines and comments as ignored
 * @param traces traces
 * @param problems what was wrong, in reading order; no more than {@link ReadBounds#mostProblems()}
 * @param problemsMet how many problems there were, those beyond the bound too
 * @param assumptions what was taken for granted because no layout states it, each once, with the first file concerned
 */
public record ReadSummary(
        Tally files, Tally lines, Tally traces, List<Problem> problems, long problemsMet, List<Problem> assumptions) {
    public ReadSummary {
        problems = List.copyOf(problems);
        assumptions = List.copyOf(assumptions);
        if (problemsMet < problems.size()) {
            throw new IllegalArgumentException(
                    "problemsMet is " + problemsMet + "; there are " + problems.size() + " problems already");
        }
    }
}
