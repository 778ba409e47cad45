package org.tautlog.cli.evidence;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import org.tautlog.archive.Archive;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.report.evidence.ContainmentAnswers;
import org.tautlog.report.evidence.ContainmentJson;
import org.tautlog.review.evidence.ArchivedStanding;
import org.tautlog.review.evidence.Containment;

/** Brackets a cause in an archive, and tells it in a few lines. */
final class ContainRun {
    private ContainRun() {}

    /** What was found, and the whole judgements of what a file of figures shows of it. */
    record Found(List<Containment> containments, Map<BriefJudgement, Judgement> shown) {
        Found {
            containments = List.copyOf(containments);
            shown = Map.copyOf(shown);
        }
    }

    static Found of(Archive archive, Suspicion suspicion, PrintWriter err) throws IOException {
        try (var query = archive.query()) {
            var standing = new ArchivedStanding(
                    query, ArchivedSpecifications.in(query, err).used());
            var containments = suspicion.contain(standing);
            var shown = standing.whole(ContainmentJson.shown(containments));
            standing.problems().forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
            if (containments.isEmpty()) {
                throw Refusal.nothingRead(
                        "the archive shows no such suspect; nothing is contained, nothing is cleared");
            }
            return new Found(containments, shown);
        }
    }

    static void print(List<Containment> containments, PrintWriter out) {
        for (var one : containments) {
            out.println(Terminal.harmless(one.place())
                    + (one.cause().isEmpty() ? "" : ", " + one.cause()) + ": hold "
                    + one.engines().size() + (one.engines().size() == 1 ? " engine, " : " engines, ")
                    + one.contained().size() + " of " + one.searched()
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
