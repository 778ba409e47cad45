package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.problem.Outcome;
import org.tautlog.review.evidence.DossierReader;

/**
 * How long the questions of a dossier and of a shift take in an archive that {@link MillionTightenings} filled; no test,
 * run by hand.
 *
 * <pre> java -cp target/test-classes:target/tautlog.jar org.tautlog.archive.ArchiveTimes DIR SERIAL FROM BEFORE [started] </pre>
 *
 * <p>With {@code started} the embedded engine is unpacked and started once before the first question, as part of start-up.
 */
final class ArchiveTimes {
    private ArchiveTimes() {}

    /** A question to an archive that answers with a number of rows. */
    private interface Question {
        int ask() throws IOException;
    }

    public static void main(String[] args) throws IOException {
        var from = OffsetDateTime.parse(args[2]);
        var before = OffsetDateTime.parse(args[3]);
        if (args.length > 4) {
            time("start of the engine", () -> {
                try (var engine = Duck.open(Path.of(args[0]))) {
                    return engine.isClosed() ? 0 : 1;
                } catch (SQLException e) {
                    throw new IOException(e);
                }
            });
        }
        for (int round = 1; round <= 3; round++) {
            System.out.println("round " + round);
            try (var query = Archive.open(Path.of(args[0])).query()) {
                time("all of a dossier", () -> dossier(query, args[1]));
            }
            try (var query = Archive.open(Path.of(args[0])).query()) {
                time("specifications", () -> rows(query.specifications()));
                time("judgements of a serial", () -> rows(query.judgements(args[1])));
                time("traces of a serial", () -> rows(query.traces(args[1])));
                time("decisions of a serial", () -> rows(query.decisions(args[1])));
                time(
                        "judgements of a shift",
                        () -> rows(query.judgements(new JudgementFilter("", "", "", from, before, ""))));
            }
        }
        System.out.printf(
                Locale.ROOT, "heap in use %d MB%n", Runtime.getRuntime().totalMemory() / 1_000_000);
    }

    /** As the command asks for it; the number is that of the engine's recordings. */
    private static int dossier(ArchiveQuery query, String serial) throws IOException {
        query.startMeanwhile();
        var used = query.specifications().value().orElseThrow();
        var readable = new HashMap<String, JointSpecification>();
        for (var one : used) {
            readable.put(
                    one.sha256(),
                    SpecificationFile.read(one.text(), one.name()).value().orElseThrow());
        }
        return DossierReader.read(query, used, readable, List.of(), serial)
                .orElseThrow()
                .tightenings()
                .size();
    }

    private static int rows(Outcome<? extends List<?>> outcome) {
        return outcome.value().orElseThrow().size();
    }

    private static void time(String what, Question question) throws IOException {
        long start = System.nanoTime();
        int rows = question.ask();
        System.out.printf(Locale.ROOT, "%-26s %6d rows %8.0f ms%n", what, rows, (System.nanoTime() - start) / 1e6);
    }
}
