package org.tautlog.cli.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.List;
import java.util.StringJoiner;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.archive.Archive;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.MadeLogs;
import org.tautlog.cli.logs.JudgingRequest;
import org.tautlog.cli.logs.SpecificationSearch;
import org.tautlog.cli.terminal.ReportOptions;
import org.tautlog.intake.ReadOptions;
import org.tautlog.problem.ProblemCode;
import org.tautlog.review.MadeShift;
import picocli.CommandLine;

class WatchCommandTest {
    /** What happens in the folder between two looks. */
    private interface Event {
        void happens() throws IOException;
    }

    private static final Event NOTHING = () -> {};

    @TempDir
    private Path folder;

    private Path drop;
    private Path made;
    private Path archive;
    private Path live;

    @BeforeEach
    void makeLogs() throws IOException {
        drop = Files.createDirectories(folder.resolve("drop"));
        archive = folder.resolve("evidence");
        live = folder.resolve("live");
        made = MadeLogs.good(folder.resolve("made"));
        Files.copy(made.resolveSibling("joint.toml"), drop.resolve("joint.toml"));
    }

    @Test
    void a_file_is_read_once_it_is_as_it_was_at_the_look_before() throws IOException {
        var text = Files.readString(made);
        int half = text.length() / 2;
        var out = watch(
                () -> Files.writeString(drop.resolve("a.csv"), text.substring(0, half)),
                () -> Files.writeString(drop.resolve("a.csv"), text.substring(half), StandardOpenOption.APPEND),
                NOTHING,
                NOTHING,
                NOTHING);
        assertEquals(1, out.lines().filter(line -> line.startsWith("kept ")).count(), out);
        assertTrue(out.contains("kept 2 traces of 1 new file"), out);
        assertTrue(out.contains("2 tightenings on 2 engines"), out);
        assertTrue(out.contains("stopped; 1 file kept"), out);
        assertTrue(Files.readString(live.resolve("verdicts.csv")).contains("FW-000002"), "the report tells what came");
        assertTrue(Files.exists(live.resolve("shift.html")), out);
    }

    @Test
    void a_name_that_no_log_has_waits_for_its_renaming() throws IOException {
        var part = drop.resolve("a.csv.part");
        var out = watch(
                () -> Files.copy(made, part), NOTHING, NOTHING, () -> Files.move(part, drop.resolve("a.csv")), NOTHING);
        assertEquals(1, out.lines().filter(line -> line.startsWith("kept ")).count(), out);
    }

    @Test
    void a_restart_reads_no_file_twice_even_where_its_list_was_lost() throws IOException {
        watch(() -> Files.copy(made, drop.resolve("a.csv")), NOTHING, NOTHING);
        int traces = traces();
        var again = watch(NOTHING, NOTHING, NOTHING);
        assertFalse(again.contains("kept 2 traces"), again);
        assertTrue(again.contains("stopped; 0 files kept"), again);
        Files.delete(live.resolve("watched.tsv"));
        var without = watch(NOTHING, NOTHING, NOTHING);
        assertTrue(without.contains("stopped; 0 files kept"), without);
        assertEquals(traces, traces());
    }

    @Test
    void a_list_that_was_cut_short_is_gone_on_with() throws IOException {
        watch(() -> Files.copy(made, drop.resolve("a.csv")), NOTHING, NOTHING);
        Files.writeString(live.resolve("watched.tsv"), "0123abc", StandardOpenOption.APPEND);
        var second = MadeLogs.write(folder.resolve("more"), List.of(MadeShift.named("FW-000009", 360)));
        var out = watch(() -> Files.copy(second, drop.resolve("b.csv")), NOTHING, NOTHING);
        assertTrue(out.contains("kept 1 trace of 1 new file"), out);
        assertFalse(watch(NOTHING, NOTHING, NOTHING).contains("kept 1"), "the second file is on the list");
    }

    @Test
    void a_file_that_grows_after_it_was_read_is_told_and_not_kept_twice() throws IOException {
        var lines = Files.readAllLines(made);
        var head = String.join("\n", lines.subList(0, lines.size() - 5)) + '\n';
        var rest = String.join("\n", lines.subList(lines.size() - 5, lines.size())) + '\n';
        var out = watch(
                () -> Files.writeString(drop.resolve("a.csv"), head),
                NOTHING,
                () -> Files.writeString(drop.resolve("a.csv"), rest, StandardOpenOption.APPEND),
                NOTHING,
                NOTHING);
        assertEquals(1, out.lines().filter(line -> line.startsWith("kept ")).count(), out);
        assertTrue(out.contains("a.csv grew after it was read"), out);
    }

    @Test
    void a_file_of_which_nothing_could_be_kept_is_read_again_once_it_is_whole() throws IOException {
        var text = Files.readString(made);
        var head = text.substring(0, text.indexOf('\n', text.length() / 3) - 4);
        var out = watch(
                () -> Files.writeString(drop.resolve("a.csv"), head),
                NOTHING,
                () -> Files.writeString(
                        drop.resolve("a.csv"), text.substring(head.length()), StandardOpenOption.APPEND),
                NOTHING,
                NOTHING);
        assertTrue(out.contains("no trace could be read"), out);
        assertTrue(out.contains("kept 2 traces of 1 new file"), out);
        assertFalse(out.contains("grew"), out);
        assertEquals(2, traces());
    }

    @Test
    void what_was_rejected_is_kept_and_the_live_report_counts_it() throws IOException {
        var out = watch(
                () -> Files.copy(made, drop.resolve("a.csv")),
                NOTHING,
                () -> Files.writeString(drop.resolve("b.csv"), "Serial,Angle (deg),Torque (daNm)\nFW-9,0,?\n"),
                NOTHING,
                NOTHING);
        try (var query = Archive.open(archive).query()) {
            assertEquals(
                    1,
                    query.problems().value().orElseThrow().stream()
                            .filter(problem -> problem.value().where().file().endsWith("b.csv"))
                            .filter(problem -> problem.value().code() != ProblemCode.ASSUMED)
                            .count(),
                    out);
        }
        assertTrue(Files.readString(live.resolve("shift.html")).contains("b.csv"), "the report tells of it");
        assertEquals(
                0, CommandLineRun.of("verify", "--archive", archive.toString()).exitCode());
    }

    @Test
    void an_archive_that_cannot_be_written_is_told_once_and_again_when_it_is_back() throws IOException {
        Files.writeString(archive, "in the way");
        var out = watch(
                () -> Files.copy(made, drop.resolve("a.csv")),
                NOTHING,
                NOTHING,
                NOTHING,
                () -> Files.delete(archive),
                NOTHING);
        assertEquals(
                1,
                out.lines()
                        .filter(line -> line.contains("tried again at each look"))
                        .count(),
                out);
        assertTrue(out.contains("that is over"), out);
        assertTrue(out.contains("kept 2 traces of 1 new file"), out);
    }

    @Test
    void a_file_that_holds_no_trace_is_told_once_and_the_next_is_kept() throws IOException {
        var out = watch(
                () -> Files.writeString(drop.resolve("a.csv"), "Angle (deg),Torque (Nm)\n"),
                NOTHING,
                NOTHING,
                () -> Files.copy(made, drop.resolve("b.csv")),
                NOTHING);
        assertEquals(
                1,
                out.lines()
                        .filter(line -> line.contains("no trace could be read"))
                        .count(),
                out);
        assertTrue(out.contains("kept 2 traces of 1 new file"), out);
    }

    @Test
    void a_file_in_a_folder_below_is_read_once_by_the_layout_above_it() throws IOException {
        var deep = Files.createDirectories(drop.resolve("S40").resolve("2026-03-17"));
        Files.writeString(drop.resolve("layout.toml"), "[log]\nignore = [\"truth.csv\"]\n");
        var out = watch(
                () -> {
                    Files.copy(made, deep.resolve("a.csv"));
                    Files.writeString(deep.resolve("truth.csv"), "serial,bolt\n");
                },
                NOTHING,
                NOTHING);
        assertTrue(out.contains("kept 2 traces of 1 new file"), out);
        assertFalse(out.contains("truth.csv"), out);
        assertTrue(Files.readString(live.resolve("watched.tsv")).contains("\tS40/2026-03-17/a.csv\n"));
        assertTrue(watch(NOTHING, NOTHING, NOTHING).contains("stopped; 0 files kept"));
        assertEquals(2, traces());
    }

    @Test
    void two_files_of_one_name_in_two_folders_are_both_read() throws IOException {
        var second = MadeLogs.write(folder.resolve("more"), List.of(MadeShift.named("FW-000009", 360)));
        var out = watch(
                () -> {
                    Files.copy(
                            made, Files.createDirectories(drop.resolve("S40")).resolve("a.csv"));
                    Files.copy(
                            second, Files.createDirectories(drop.resolve("S50")).resolve("a.csv"));
                },
                NOTHING,
                NOTHING,
                NOTHING);
        assertTrue(out.contains("kept 3 traces of 2 new files"), out);
        assertFalse(out.contains("grew"), out);
        assertTrue(watch(NOTHING, NOTHING, NOTHING).contains("stopped; 0 files kept"));
    }

    @Test
    void json_is_read_where_a_layout_says_how_it_lies_and_passed_over_where_none_does() throws IOException {
        var json = Files.createDirectories(drop.resolve("json"));
        Files.writeString(json.resolve("layout.toml"), """
                [json]
                traces = ""
                [identity]
                serial = { column = "/serial" }
                [samples]
                angle = { column = "/angle" }
                torque = { column = "/torque" }
                """);
        var text = jsonOf(MadeShift.named("FW-000001", 360));
        var out = watch(
                () -> {
                    Files.writeString(json.resolve("a.json"), text);
                    Files.writeString(drop.resolve("settings.json"), "{\"station\": 1}");
                },
                NOTHING,
                NOTHING,
                NOTHING);
        assertTrue(out.contains("kept 1 trace of 1 new file"), out);
        assertFalse(out.contains("settings.json"), out);
        assertTrue(watch(NOTHING, NOTHING, NOTHING).contains("stopped; 0 files kept"));
        assertEquals(1, traces());
    }

    @Test
    void json_beside_a_layout_that_cannot_be_read_is_told() throws IOException {
        Files.writeString(drop.resolve("layout.toml"), "[json\n");
        var out = watch(() -> Files.writeString(drop.resolve("a.json"), "{}"), NOTHING, NOTHING, NOTHING);
        assertTrue(out.contains("layout.toml"), out);
        assertEquals(
                1,
                out.lines()
                        .filter(line -> line.contains("no trace could be read"))
                        .count(),
                out);
    }

    @Test
    void links_are_not_followed_and_what_the_program_writes_below_is_no_log() throws IOException {
        var outside = Files.createDirectories(folder.resolve("outside"));
        Files.copy(made, outside.resolve("a.csv"));
        Files.createSymbolicLink(drop.resolve("elsewhere"), outside);
        Files.createSymbolicLink(drop.resolve("round"), drop);
        Files.createSymbolicLink(drop.resolve("b.csv"), outside.resolve("a.csv"));
        archive = drop.resolve("evidence");
        live = drop.resolve("live");
        assertFalse(watch(NOTHING, NOTHING, NOTHING).contains("kept 2"), "a link leads out of the folder");
        var out = watch(() -> Files.copy(made, drop.resolve("c.csv")), NOTHING, NOTHING, NOTHING, NOTHING);
        assertEquals(1, out.lines().filter(line -> line.startsWith("kept ")).count(), out);
        assertTrue(Files.exists(live.resolve("verdicts.csv")), out);
        assertFalse(out.contains("verdicts.csv cannot"), out);
    }

    private static String jsonOf(MadeShift.Made made) {
        var angles = new StringJoiner(",", "[", "]");
        var torques = new StringJoiner(",", "[", "]");
        for (int i = 0; i < made.curve().size(); i++) {
            angles.add(String.valueOf(made.curve().angleDeg(i)));
            torques.add(String.valueOf(made.curve().torqueNm(i)));
        }
        return "{\"serial\": \"" + made.judgement().identity().serial() + "\", \"angle\": " + angles + ", \"torque\": "
                + torques + "}";
    }

    /** What a shell starts in the background ignores INT, and hands that on to its children (POSIX, shell, 2.11). */
    private static boolean ignoresInterrupts() throws IOException {
        var status = Path.of("/proc/self/status");
        return Files.exists(status)
                && Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("SigIgn:"))
                        .anyMatch(line ->
                                (Long.parseUnsignedLong(line.substring(7).strip(), 16) & 0b10) != 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"TERM", "INT"})
    void the_process_ends_cleanly_when_it_is_told_to(String signal) throws Exception {
        assumeFalse("INT".equals(signal) && ignoresInterrupts(), "started in the background of a shell");
        Files.copy(made, drop.resolve("a.csv"));
        var log = folder.resolve("out.txt");
        var process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.tautlog.cli.Main",
                        "watch",
                        drop.toString(),
                        "--archive",
                        archive.toString(),
                        "--out",
                        live.toString(),
                        "--no-pdf",
                        "--every",
                        "0.2")
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        try {
            for (int i = 0; i < 600 && process.isAlive() && !Files.exists(live.resolve("shift.html")); i++) {
                process.waitFor(100, TimeUnit.MILLISECONDS);
            }
            assertTrue(process.isAlive(), () -> read(log));
            signal(process, signal);
            assertTrue(process.waitFor(60, TimeUnit.SECONDS), () -> read(log));
        } finally {
            process.destroyForcibly();
        }
        assertTrue(read(log).contains("stopped; 1 file kept"), read(log));
        assertEquals(2, traces());
        // What a shell reports of a process that such a signal ended: 128 and the signal's number (POSIX).
        assertEquals(signal.equals("INT") ? 130 : 143, process.exitValue());
    }

    private static void signal(Process process, String signal) throws Exception {
        var kill = new ProcessBuilder("kill", "-" + signal, String.valueOf(process.pid())).start();
        assertTrue(kill.waitFor(10, TimeUnit.SECONDS));
        assertEquals(0, kill.exitValue());
    }

    @Test
    void without_an_archive_there_is_nothing_to_watch_for() {
        assertEquals(2, CommandLineRun.of("watch", drop.toString()).exitCode());
        assertEquals(
                3,
                CommandLineRun.of("watch", folder.resolve("none").toString(), "--archive", archive.toString())
                        .exitCode());
    }

    private String watch(Event... events) throws IOException {
        var left = new ArrayDeque<>(List.of(events));
        var specification = drop.resolve("joint.toml");
        var request = new JudgingRequest(
                List.of(drop), specification, SpecificationSearch.read(specification), ReadOptions.withDefaults());
        var kept = CommandLine.populateCommand(new ArchivedShiftInputs(), "--archive", archive.toString());
        var reports = CommandLine.populateCommand(new ReportOptions(), "--out", live.toString(), "--no-pdf");
        var text = new StringWriter();
        var out = new PrintWriter(text);
        new WatchRun(drop, request, kept, reports, out, out).run(() -> {
            var event = left.poll();
            if (event == null) {
                return false;
            }
            try {
                event.happens();
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
            return true;
        });
        return text.toString();
    }

    private int traces() throws IOException {
        int traces = 0;
        try (var query = Archive.open(archive).query()) {
            for (var serial : List.of("FW-000001", "FW-000002")) {
                traces += query.traces(serial).value().orElseThrow().size();
            }
        }
        return traces;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
