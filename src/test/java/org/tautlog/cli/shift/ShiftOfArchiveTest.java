package org.tautlog.cli.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.ArchivedShift;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.MadeLogs;

class ShiftOfArchiveTest {
    @TempDir
    private Path folder;

    @Test
    void a_shift_out_of_the_archive_says_what_the_logs_said() throws IOException {
        var archive = ArchivedShift.simulated(folder);
        var logs = folder.resolve("line").toString();
        var ofLogs = CommandLineRun.of("shift", logs, "--out", out("a"));
        var ofArchive = CommandLineRun.of("shift", "--archive", archive, "--out", out("b"));
        assertEquals(ofLogs.exitCode(), ofArchive.exitCode(), ofArchive.toString());
        assertEquals(
                ofLogs.out().lines().toList().get(0),
                ofArchive.out().lines().toList().get(0));
        assertEquals(rows("a"), rows("b"));
    }

    @Test
    void tightenings_without_a_time_come_out_of_the_archive_too() throws IOException {
        var log = MadeLogs.mixed(folder.resolve("logs"));
        Files.writeString(log, Files.readString(log).replaceFirst("Recorded", "Elsewhere"));
        var archive = ArchivedShift.of(folder, folder.resolve("logs"));
        CommandLineRun.of("shift", folder.resolve("logs").toString(), "--no-pdf", "--out", out("a"));
        var run = CommandLineRun.of("shift", "--archive", archive, "--no-pdf", "--out", out("b"));
        assertTrue(run.out().startsWith("3 tightenings on 3 engines"), run.toString());
        assertEquals(rows("a"), rows("b"));
        assertTrue(rows("b").stream().noneMatch(row -> row.contains("2026-03-02T")), rows("b")::toString);
    }

    @Test
    void station_and_time_pick_a_part() throws IOException {
        var archive = ArchivedShift.simulated(folder);
        var one = CommandLineRun.of("shift", "--archive", archive, "--station", "S50", "--out", out("c"));
        assertTrue(one.out().startsWith("24 tightenings on 6 engines"), one.toString());
        var none = CommandLineRun.of("shift", "--archive", archive, "--from", "2030-01-01T00:00Z", "--out", out("d"));
        assertEquals(3, none.exitCode(), none.toString());
    }

    @Test
    void shapes_are_learned_from_what_the_archive_kept_of_before_the_shift() throws IOException {
        var archive = ArchivedShift.simulated(folder);
        assertEquals(0, past(archive, "2026-03-17T00:00+01:00"));
        int half = past(archive, "2026-03-17T06:22+01:00");
        assertTrue(half > 0 && half <= 6 * 8, "learned from " + half);
    }

    private int past(String archive, String from) throws IOException {
        CommandLineRun.of("shift", "--archive", archive, "--from", from, "--no-pdf", "--out", out("past"));
        var streams = new ObjectMapper()
                .readTree(Files.readString(Path.of(out("past"), "shift.json")))
                .at("/shapes/streams");
        int past = 0;
        for (var stream : streams) {
            past += stream.get("past").asInt();
        }
        return past;
    }

    @Test
    void a_shift_of_the_calendar_is_picked_in_local_time() throws IOException {
        var archive = ArchivedShift.simulated(folder);
        var calendar = folder.resolve("shifts.toml");
        Files.writeString(calendar, """
                zone = "Europe/Berlin"
                [[shift]]
                name = "early"
                from = "06:00"
                to = "06:15"
                [[shift]]
                name = "rest of it"
                from = "06:15"
                to = "06:00"
                """);
        var early = ofCalendar(archive, calendar, "early 2026-03-17");
        var rest = ofCalendar(archive, calendar, "rest of it 2026-03-17");
        int first = tightenings(early);
        assertTrue(first > 0 && first < 48, early.toString());
        assertEquals(48, first + tightenings(rest), "each tightening in one shift");
        assertEquals(3, ofCalendar(archive, calendar, "early 2026-03-18").exitCode());
        var unknown = ofCalendar(archive, calendar, "late 2026-03-17");
        assertEquals(2, unknown.exitCode());
        assertTrue(unknown.err().contains("knows no shift 'late'; there are early, rest of it"), unknown.err());
        assertTrue(ofCalendar(archive, calendar, "early").err().contains("as \"early 2026-02-03\""));
        assertEquals(
                2,
                CommandLineRun.of("shift", "--archive", archive, "--shift", "early 2026-03-17")
                        .exitCode());
        var byClock = CommandLineRun.of(
                "shift", "--archive", archive, "--calendar", calendar.toString(), "--no-pdf", "--out", out("now"));
        assertEquals(3, byClock.exitCode(), "the logs are of a day long past: " + byClock);
    }

    private CommandLineRun ofCalendar(String archive, Path calendar, String shift) {
        return CommandLineRun.of(
                "shift",
                "--archive",
                archive,
                "--calendar",
                calendar.toString(),
                "--shift",
                shift,
                "--no-pdf",
                "--out",
                out("e"));
    }

    private static int tightenings(CommandLineRun run) {
        return Integer.parseInt(run.out().split(" ", 2)[0]);
    }

    @Test
    void logs_and_archive_together_are_wrong_use() {
        assertEquals(2, CommandLineRun.of("shift", "logs", "--archive", "x").exitCode());
        assertEquals(2, CommandLineRun.of("shift", "--station", "S40").exitCode());
        assertEquals(2, CommandLineRun.of("shift").exitCode());
    }

    private String out(String name) {
        return folder.resolve(name).toString();
    }

    private Set<String> rows(String name) throws IOException {
        return new TreeSet<>(Files.readAllLines(folder.resolve(name).resolve("verdicts.csv")));
    }
}
