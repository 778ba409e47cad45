package org.tautlog.cli.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.Archive;
import org.tautlog.cli.ArchivedShift;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.MadeLogs;
import org.tautlog.judge.Judgement;
import org.tautlog.review.MadeShift;
import org.tautlog.review.MadeShift.Made;
import org.tautlog.trace.TraceIdentity;

/** What a decision may be about, and what it then covers. */
class DecideCommandTest {
    private static final String SERIAL = "FW-000001";

    @TempDir
    private Path folder;

    @Test
    void a_bolt_that_no_engine_of_the_station_has_is_refused_with_those_there_are() throws IOException {
        var archive = ArchivedShift.of(
                folder,
                MadeLogs.write(
                        folder.resolve("logs"), List.of(tightening(SERIAL, "3", 1), tightening("FW-000002", "10", 1))));
        for (var bolt : List.of("9", "eight", " ", "")) {
            assertEquals(2, decide(archive, "accept", "--bolt", bolt).exitCode(), bolt);
        }
        var refused = decide(archive, "accept", "--bolt", "9").err();
        assertTrue(refused.contains("there are 3, 10"), refused);
        assertEquals(0, decisions(archive), "a refused decision is not recorded");
        var peers = decide(archive, "quarantine", "--bolt", "10");
        assertEquals(0, peers.exitCode(), peers.toString());
        var trimmed = decide(archive, "accept", "--bolt", "3 ");
        assertTrue(trimmed.out().contains(": FW-000001 bolt 3 accept"), trimmed.toString());
    }

    @Test
    void the_action_stands_after_the_serial_or_by_its_name_and_once() throws IOException {
        var archive =
                ArchivedShift.of(folder, MadeLogs.write(folder.resolve("logs"), List.of(tightening(SERIAL, "8", 1))));
        var named = CommandLineRun.of(
                "decide",
                SERIAL,
                "--action",
                "accept",
                "--archive",
                archive,
                "--by",
                "A. Reviewer",
                "--reason",
                "seen");
        assertEquals(0, named.exitCode(), named.toString());
        assertTrue(named.out().contains(": FW-000001 accept, by A. Reviewer"), named.out());
        assertEquals(2, decide(archive, "accept", "--action", "release").exitCode(), "two");
        var none = CommandLineRun.of("decide", SERIAL, "--archive", archive, "--by", "A", "--reason", "seen");
        assertEquals(2, none.exitCode(), "none");
        assertTrue(none.err().contains("name one action, after the serial or with --action: accept, "), none.err());
        assertEquals(1, decisions(archive));
    }

    @Test
    void an_attempt_imported_after_an_acceptance_is_not_covered_by_it() throws IOException {
        var archive =
                ArchivedShift.of(folder, MadeLogs.write(folder.resolve("logs"), List.of(tightening(SERIAL, "8", 1))));
        decide(archive, "accept", "--bolt", "8");
        var accepted = engine(archive);
        assertEquals(0, accepted.exitCode(), accepted.toString());
        ArchivedShift.of(folder, MadeLogs.write(folder.resolve("later"), List.of(tightening(SERIAL, "8", 2))));
        var after = engine(archive);
        assertEquals(1, after.exitCode(), after.toString());
        assertTrue(after.out().contains("No. Hold it until a qualified person has decided."), after.out());
        assertTrue(
                after.out().contains("attempt 2 came into the archive after the decision to accept of "), after.out());
    }

    @Test
    void a_decision_after_the_fact_says_so() throws IOException {
        var archive = ArchivedShift.of(
                folder,
                MadeLogs.write(
                        folder.resolve("logs"), List.of(tightening(SERIAL, "8", 1), tightening(SERIAL, "8", 2))));
        decide(archive, "re-tighten", "--bolt", "8");
        var told = engine(archive).out();
        assertTrue(told.contains("Decided after attempt 2 was made: Re-tighten, bolt 8"), told);
    }

    private CommandLineRun engine(String archive) {
        return CommandLineRun.of(
                "engine",
                SERIAL,
                "--archive",
                archive,
                "--out",
                folder.resolve("reports").toString(),
                "--no-pdf");
    }

    private static CommandLineRun decide(String archive, String action, String... more) {
        var words = new ArrayList<>(
                List.of("decide", SERIAL, action, "--archive", archive, "--by", "A. Reviewer", "--reason", "seen"));
        words.addAll(List.of(more));
        return CommandLineRun.of(words.toArray(String[]::new));
    }

    private static int decisions(String archive) throws IOException {
        try (var query = Archive.open(Path.of(archive)).query()) {
            return query.decisions(SERIAL).value().orElseThrow().size();
        }
    }

    /** Turned short, so that it does not conform. */
    private static Made tightening(String serial, String bolt, int attempt) {
        var made = MadeShift.named(serial, 300);
        var like = made.judgement();
        var identity = new TraceIdentity(
                serial,
                "S40",
                bolt,
                bolt,
                attempt,
                OffsetDateTime.parse("2026-03-02T06:00:00+01:00").plusMinutes(attempt),
                "A17");
        return new Made(
                new Judgement(
                        identity,
                        like.source(),
                        like.specificationName(),
                        like.specificationVersion(),
                        like.signature(),
                        like.verdict(),
                        like.findings()),
                made.curve());
    }
}
