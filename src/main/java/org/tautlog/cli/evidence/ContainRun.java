package org.tautlog.cli.evidence;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.tautlog.archive.Archive;
import org.tautlog.archive.JudgementFilter;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.ContainmentAnswers;
import org.tautlog.review.evidence.Containment;
import org.tautlog.review.evidence.StandingJudgements;

/** Brackets a cause in an archive, and tells it in a few lines. */
final class ContainRun {
    private ContainRun() {}

    static List<Containment> of(Archive archive, Suspicion suspicion, PrintWriter err) throws IOException {
        try (var query = archive.query()) {
            var specifications = ArchivedSpecifications.in(query, err);
            var found = query.judgements(JudgementFilter.everything());
            found.problems().forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
            var containments =
                    suspicion.contain(StandingJudgements.of(found.value().orElse(List.of()), specifications.used()));
            if (containments.isEmpty()) {
                throw Refusal.nothingRead(
                        "the archive shows no such suspect; nothing is contained, nothing is cleared");
            }
            return containments;
        }
    }

    static void print(List<Containment> containments, PrintWriter out) {
        for (var one : containments) {
            out.println(Terminal.harmless(one.place())
                    + (one.cause().isEmpty() ? "" : ", " + one.cause()) + ": hold "
                    + one.engines().size() + " engines, " + one.contained().size() + " of " + one.searched()
                    + " tightenings");
            sentences(ContainmentAnswers.bracket(one), out);
            sentences(ContainmentAnswers.margins(one), out);
            sentences(ContainmentAnswers.lots(one), out);
            sentences(ContainmentAnswers.reasons(one), out);
        }
        out.println("Shrink a list only by a recorded decision.");
    }

    private static void sentences(List<String> sentences, PrintWriter out) {
        sentences.forEach(sentence -> out.println("  " + Terminal.harmless(sentence)));
    }
}
