package org.tautlog.review;

import java.util.List;
import org.tautlog.problem.Problem;

/**
 * What happened while the logs were read, in the reviewer's words; every count is of the same run.
 *
 * @param files files read
 * @param filesIgnored files left unread on purpose
 * @param kept traces that were judged
 * @param rejected traces or rows that could not be used
 * @param problems what was rejected, and why, as many as the reader kept
 * @param assumptions what was taken for granted because nothing said otherwise
 */
public record ImportRecord(
        int files, int filesIgnored, long kept, long rejected, List<Problem> problems, List<Problem> assumptions) {
    public ImportRecord {
        if (files < 0 || filesIgnored < 0 || kept < 0 || rejected < 0) {
            throw new IllegalArgumentException("counts are " + files + ", " + filesIgnored + ", " + kept + ", "
                    + rejected + "; a count is not negative");
        }
        problems = List.copyOf(problems);
        assumptions = List.copyOf(assumptions);
    }
}
