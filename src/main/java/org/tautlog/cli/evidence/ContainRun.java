package org.tautlog.cli.evidence;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tautlog.archive.Archive;
import org.tautlog.archive.KeptDecision;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.problem.Outcome;
import org.tautlog.report.evidence.ContainmentAnswers;
import org.tautlog.report.evidence.ContainmentJson;
import org.tautlog.review.evidence.ArchivedStanding;
import org.tautlog.review.evidence.Containment;
import org.tautlog.review.evidence.EngineHold;

/** Brackets a cause in an archive, and tells it in a few lines. */
final class ContainRun {
    private ContainRun() {}

    /** What was found, and the whole judgements of what a file of figures shows of it. */
    record Found(EngineHold hold, Map<BriefJudgement, Judgement> shown) {
        Found {
            shown = Map.copyOf(shown);
        }
    }

    static Found of(Archive archive, Suspicion suspicion, PrintWriter err) throws IOException {
        try (var query = archive.query()) {
            var specifications = ArchivedSpecifications.in(query);
            var standing = new ArchivedStanding(query, specifications.used());
            var places = suspicion.contain(standing);
            var shown = standing.whole(ContainmentJson.shown(places));
            var decided = query.decisions("");
            var problems = Stream.of(specifications.problems(), standing.problems(), decided.problems())
                    .flatMap(List::stream)
                    .distinct()
                    .toList();
            if (places.isEmpty()) {
                problems.forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
                throw Refusal.nothingRead(
                        suspicion.unfound(query, standing) + "; nothing is contained, nothing is cleared");
            }
            return new Found(new EngineHold(suspicion.words(), places, standing(decided, places), problems), shown);
        }
    }

    private static Map<String, List<KeptDecision>> standing(
            Outcome<List<KeptDecision>> decided, List<Containment> places) {
        var held = places.stream().flatMap(place -> place.engines().stream()).collect(Collectors.toSet());
        return decided.value().orElse(List.of()).stream()
                .filter(one -> one.standing() && held.contains(one.decision().serial()))
                .collect(Collectors.groupingBy(one -> one.decision().serial()));
    }

    static void print(EngineHold hold, PrintWriter out) {
        for (var one : hold.places()) {
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
        ContainmentAnswers.problems(hold).forEach(sentence -> out.println(Terminal.harmless(sentence)));
        out.println("Shrink a list only by a recorded decision.");
    }

    private static void sentences(List<String> sentences, PrintWriter out) {
        sentences.forEach(sentence -> out.println("  " + Terminal.harmless(sentence)));
    }
}
