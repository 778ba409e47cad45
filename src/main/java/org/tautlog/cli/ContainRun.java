package org.tautlog.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import org.tautlog.archive.Archive;
import org.tautlog.archive.JudgementFilter;
import org.tautlog.review.evidence.Contained;
import org.tautlog.review.evidence.Containment;
import org.tautlog.review.evidence.StandingJudgements;
import org.tautlog.review.stream.Change;
import org.tautlog.trace.TraceIdentity;

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
            out.println("  last known good: "
                    + one.lastGood().map(ContainRun::words).orElse("none in the archive"));
            out.println("  first known good: "
                    + one.firstGood().map(ContainRun::words).orElse("none in the archive"));
            one.change().ifPresent(change -> out.println("  " + words(change)));
            for (var reason : Contained.Reason.values()) {
                var engines = one.contained().stream()
                        .filter(contained -> contained.reason() == reason)
                        .map(Contained::serial)
                        .distinct()
                        .collect(Collectors.joining(", "));
                if (!engines.isEmpty()) {
                    out.println("  " + reason.words() + ": " + Terminal.harmless(engines));
                }
            }
        }
        out.println("Known good is " + Containment.GOOD_RUN + " conforming tightenings in a row on the same spindle;"
                + " clocks are taken as set alike. Shrink a list only by a recorded decision.");
    }

    private static String words(Change change) {
        return change.feature().title() + " moved at " + words(change.first()) + ", between tightenings "
                + (change.point().earliest() + 1) + " and " + (change.point().latest() + 1)
                + " of its chart (95 % confidence)";
    }

    private static String words(TraceIdentity identity) {
        var time = identity.time();
        return Terminal.harmless(identity.words()) + (time == null ? "" : ", " + time);
    }
}
