package org.tautlog.cli.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.MadeLogs;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.judge.Verdict;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.review.MadeShift;
import picocli.CommandLine.Help.Ansi;

class JudgeCommandTest {
    @TempDir
    private Path folder;

    @Test
    void all_conforming_is_exit_code_0() throws IOException {
        var log = MadeLogs.good(folder);
        var run = CommandLineRun.of("judge", log.toString());
        assertEquals(0, run.exitCode(), run.toString());
        assertTrue(run.out().contains("2 tightenings on 2 engines: 0 nonconforming"), run.out());
        assertTrue(run.out().contains("judged by Fenwater main through-bolt, version 3"), run.out());
    }

    @Test
    void one_that_does_not_conform_is_exit_code_1_and_stands_first() throws IOException {
        MadeLogs.mixed(folder);
        var run = CommandLineRun.of("judge", folder.toString());
        assertEquals(1, run.exitCode(), run.toString());
        var rows = run.out().lines().toList();
        assertTrue(rows.get(1).startsWith("▲ nonconforming"), run.out());
        assertTrue(run.out().contains("turn-short: "), run.out());
    }

    @Test
    void json_is_one_object_a_line_in_reading_order_and_nothing_else() throws Exception {
        var log = MadeLogs.mixed(folder);
        var run = CommandLineRun.of("judge", log.toString(), "--json");
        assertEquals(1, run.exitCode(), run.toString());
        var objects = json(run.out());
        assertEquals(
                List.of("FW-000001", "FW-000002", "=FW<b>\"3"),
                objects.stream().map(object -> object.get("serial").asText()).toList());
        var hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(log));
        for (var object : objects) {
            assertEquals(
                    HexFormat.of().formatHex(hash),
                    object.get("source").get("sha256").asText());
            assertEquals(log.toString(), object.get("source").get("file").asText());
        }
        assertEquals("nonconforming", objects.get(1).get("verdict").asText());
    }

    /** The numbers of ResultEvaluation in OPC 40001-101 are from memory: 1 OK, 2 not OK, 3 not decidable. */
    @Test
    void a_joining_result_tells_the_same_verdict_and_turn_as_the_json() throws IOException {
        MadeLogs.mixed(folder);
        var own = json(CommandLineRun.of("judge", folder.toString(), "--json").out());
        var results = json(CommandLineRun.of("judge", folder.toString(), "--joining-result")
                .out());
        assertEquals(own.size(), results.size());
        for (int i = 0; i < own.size(); i++) {
            var data = results.get(i).get("ResultMetaData");
            assertEquals(own.get(i).get("serial").asText(), data.get("PartId").asText());
            int expected = switch (own.get(i).get("verdict").asText()) {
                case "conforming" -> 1;
                case "nonconforming" -> 2;
                default -> 3;
            };
            assertEquals(expected, data.get("ResultEvaluation").asInt());
            var turns = new ArrayList<Double>();
            results.get(i).at("/ResultContent/0/OverallResultValues").forEach(value -> {
                if (value.get("Name").asText().equals("turnDeg")) {
                    turns.add(value.get("MeasuredValue").asDouble());
                }
            });
            var turn = own.get(i).at("/signature/turnDeg");
            assertEquals(turn.isNumber() ? List.of(turn.asDouble()) : List.of(), turns);
        }
    }

    @Test
    void the_table_and_the_json_tell_the_same_turn() throws IOException {
        MadeLogs.mixed(folder);
        var turn = json(CommandLineRun.of("judge", folder.toString(), "--json").out())
                .get(1)
                .get("signature")
                .get("turnDeg")
                .asDouble();
        var shown = String.format(Locale.ROOT, "%.1f", turn);
        var table = CommandLineRun.of("judge", folder.toString()).out();
        assertTrue(
                table.lines().anyMatch(line -> line.contains("FW-000002") && line.contains(shown)),
                shown + "\n" + table);
    }

    @Test
    void a_missing_specification_is_wrong_use_that_says_how_to_go_on() throws IOException {
        var log = MadeLogs.good(folder);
        Files.delete(folder.resolve("joint.toml"));
        var run = CommandLineRun.of("judge", log.toString());
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("--spec FILE"), run.err());
        assertEquals("", run.out());
    }

    @Test
    void a_stated_specification_comes_before_the_one_that_lies_there() throws IOException {
        var log = MadeLogs.good(folder);
        var broken = Files.writeString(folder.resolve("other.toml"), "[specification]\nname = \"x\"\n");
        var run = CommandLineRun.of("judge", log.toString(), "--spec", broken.toString());
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("other.toml"), run.err());
    }

    @Test
    void two_folders_with_different_specifications_are_not_judged_by_either() throws IOException {
        MadeLogs.good(folder.resolve("a"));
        MadeLogs.good(folder.resolve("b"));
        var run = CommandLineRun.of(
                "judge", folder.resolve("a").toString(), folder.resolve("b").toString());
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("different specifications"), run.err());
    }

    @Test
    void nothing_readable_is_exit_code_3() throws IOException {
        MadeLogs.good(folder);
        var run = CommandLineRun.of("judge", folder.resolve("missing.csv").toString());
        assertEquals(3, run.exitCode(), run.toString());
        assertTrue(run.err().contains("missing.csv"), run.err());
    }

    @Test
    void logs_that_are_not_there_are_said_to_be_missing_before_their_specification_is() {
        var run = CommandLineRun.of("judge", folder.resolve("nope.csv").toString());
        assertEquals(3, run.exitCode(), run.toString());
        assertTrue(run.err().contains("there is no file or folder"), run.err());
    }

    @Test
    void a_rejected_recording_is_never_silently_passed() throws IOException {
        var log = MadeLogs.good(folder);
        var lines = new ArrayList<>(Files.readAllLines(log));
        lines.set(500, lines.get(500).replaceAll("[0-9]+[.][0-9]+", "oops"));
        Files.write(log, lines);
        var run = CommandLineRun.of("judge", log.toString());
        assertEquals(1, run.exitCode(), run.toString());
        assertTrue(run.err().contains("rejected: 0 files, 1 trace, "), run.err());
        assertTrue(run.err().contains("S40.csv:501"), run.err());
    }

    @Test
    void text_of_a_log_cannot_steer_the_terminal() {
        assertEquals("a?[31mb?c", Terminal.harmless("a\u001b[31mb\u202ec"));
    }

    @Test
    void colour_never_carries_the_verdict_alone_and_can_be_off() {
        for (var verdict : Verdict.values()) {
            assertTrue(Terminal.verdict(verdict, 20, Ansi.ON).contains("\u001b["), verdict.word());
            var plain = Terminal.verdict(verdict, 20, Ansi.OFF);
            assertFalse(plain.contains("\u001b"), plain);
            assertTrue(plain.contains(verdict.word()) && plain.length() == 20, plain);
        }
    }

    @Test
    void help_shows_examples_exit_codes_and_the_safety_note() {
        for (var command : List.of("judge", "shift")) {
            var help = CommandLineRun.of(command, "--help").out();
            assertTrue(help.contains("tautlog " + command + " logs/"), help);
            assertTrue(help.contains("nothing could be read"), help);
            var words = help.replaceAll("\\s+", " ");
            assertTrue(words.contains(SafetyNote.TEXT), help);
            assertTrue(help.lines().allMatch(line -> line.length() <= 100), help);
        }
    }

    @Test
    void every_tightening_is_shown_where_all_are_asked_for() throws IOException {
        MadeLogs.write(folder, MadeShift.shift(3));
        var few = CommandLineRun.of("judge", folder.toString()).out();
        var all = CommandLineRun.of("judge", folder.toString(), "--all").out();
        assertFalse(few.contains("○ conforming"), few);
        assertEquals(
                24,
                all.lines()
                        .filter(line -> line.contains("conforming  FW-") || line.contains("FW-0"))
                        .count(),
                all);
    }

    private static List<JsonNode> json(String out) throws IOException {
        var objects = new ArrayList<JsonNode>();
        for (var line : out.lines().toList()) {
            objects.add(new ObjectMapper().readTree(line));
        }
        return objects;
    }
}
