package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Locale;

/**
 * How long the questions of a dossier and of a shift take in an archive that {@link MillionTightenings} filled; no test,
 * run by hand.
 *
 * <pre> java -cp target/test-classes:target/tautlog.jar org.tautlog.archive.ArchiveTimes DIR SERIAL FROM BEFORE </pre>
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
        for (int round = 1; round <= 3; round++) {
            try (var query = Archive.open(Path.of(args[0])).query()) {
                System.out.println("round " + round);
                time("judgements of a serial", () -> rows(query.judgements(args[1])));
                time("traces of a serial", () -> rows(query.traces(args[1])));
                var trace = query.traces(args[1]).value().orElseThrow().get(0).value();
                var at = trace.identity();
                time(
                        "peers of one tightening",
                        () -> rows(query.peers(
                                at.station(),
                                at.spindle(),
                                at.bolt(),
                                java.util.Objects.requireNonNull(at.time()),
                                30,
                                30)));
                time("decisions of a serial", () -> rows(query.decisions(args[1])));
                time(
                        "judgements of a shift",
                        () -> rows(query.judgements(new JudgementFilter("", "", "", from, before, ""))));
            }
        }
        System.out.printf(
                Locale.ROOT, "heap in use %d MB%n", Runtime.getRuntime().totalMemory() / 1_000_000);
    }

    private static int rows(org.tautlog.problem.Outcome<? extends java.util.List<?>> outcome) {
        return outcome.value().orElseThrow().size();
    }

    private static void time(String what, Question question) throws IOException {
        long start = System.nanoTime();
        int rows = question.ask();
        System.out.printf(Locale.ROOT, "%-26s %6d rows %8.0f ms%n", what, rows, (System.nanoTime() - start) / 1e6);
    }
}
