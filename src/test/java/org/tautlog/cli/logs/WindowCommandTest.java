package org.tautlog.cli.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.line.FenwaterEngine;

class WindowCommandTest {
    @TempDir
    private Path folder;

    @Test
    void a_study_leaves_a_page_and_a_proposal_that_reads_back() throws IOException {
        var joint = joint();
        var draft = folder.resolve("draft.toml");
        var run = CommandLineRun.of(
                "window", joint, "--draws", "1000", "--out", folder.toString(), "--propose", draft.toString());
        assertEquals(0, run.exitCode(), run.toString());
        assertTrue(run.out().contains("clamp load, cold after warm-up"), run.out());
        assertTrue(Files.exists(folder.resolve("window.html")));
        assertTrue(Files.readString(draft).startsWith("# A draft from a tolerance study"));
        var proposed = SpecificationFile.read(draft).value().orElseThrow();
        assertEquals("4 proposal", proposed.version());
        assertEquals(FenwaterEngine.specification().statedJoint(), proposed.statedJoint());
    }

    @Test
    void the_same_seed_gives_the_same_words_and_json_alone_writes_no_page() throws IOException {
        var joint = joint();
        var before = lastWritten(Path.of("reports", "window.html"));
        var once = CommandLineRun.of("window", joint, "--draws", "1000", "--seed", "9", "--json");
        assertEquals(once, CommandLineRun.of("window", joint, "--draws", "1000", "--seed", "9", "--json"));
        assertTrue(once.out().startsWith("{\"specification\":\"Fenwater through-bolt M10\""), once.out());
        assertEquals(before, lastWritten(Path.of("reports", "window.html")));
    }

    @Test
    void a_released_specification_is_never_overwritten() throws IOException {
        var joint = joint();
        var before = Files.readString(Path.of(joint));
        var run = CommandLineRun.of("window", joint, "--draws", "1000", "--json", "--propose", joint);
        assertEquals(2, run.exitCode(), run.toString());
        assertEquals(before, Files.readString(Path.of(joint)));
    }

    @Test
    void a_specification_that_states_no_joint_is_refused_and_the_section_named() throws IOException {
        var text = Files.readString(Path.of(joint()));
        var bare = folder.resolve("bare.toml");
        Files.writeString(bare, text.substring(0, text.indexOf("[bolt]")));
        var run = CommandLineRun.of("window", bare.toString(), "--json");
        assertEquals(2, run.exitCode(), run.toString());
        assertTrue(run.err().contains("[bolt], [[layer]] and [friction]"), run.err());
    }

    /** Common practice, no source: a long bolt, snug plus one turn, nearly 1 mm further when warm. Here over 380 mm and 80 K. */
    @Test
    void the_given_number_that_does_not_fit_is_named_on_terminal_page_and_in_json() throws IOException {
        var file = folder.resolve("millimetre.toml");
        Files.writeString(
                file,
                Files.readString(Path.of(joint()))
                        .replace("value = 125.0, unit = \"mm\"", "value = 102.5, unit = \"mm\"")
                        .replace("value = 378.0", "value = 355.5")
                        .replace("target = 360.0", "target = 340.0")
                        .replace("value = 95.0, unit = \"°C\"", "value = 100.0, unit = \"°C\"")
                        .replace("[tolerance]", "further-stretch = { value = 1.0, unit = \"mm\" }\n[tolerance]"));
        var words =
                "The stated further stretch of 1.00 mm does not fit: the stated temperatures, as much as an even rise of"
                        + " 80 K, give 0.35 mm; 1.00 mm would need a rise of 230 K.";
        var run = CommandLineRun.of("window", file.toString(), "--draws", "1000", "--out", folder.toString());
        assertEquals(0, run.exitCode(), run.toString());
        assertTrue(run.out().contains("  No. What does not fit: further stretch."), run.out());
        assertTrue(run.out().contains(words), run.out());
        var page = Files.readString(folder.resolve("window.html")).replace('\u00a0', ' ');
        assertTrue(page.contains("No. What does not fit: further stretch."), "in the answers");
        assertTrue(page.contains(words), "with the numbers");
        var json = CommandLineRun.of("window", file.toString(), "--draws", "1000", "--json")
                .out();
        assertTrue(json.contains("\"doNotFit\":[\"further-stretch\"]"), json);
    }

    @Test
    void logs_that_hold_nothing_end_with_their_own_exit_code() throws IOException {
        var run = CommandLineRun.of(
                "window",
                joint(),
                "--draws",
                "1000",
                "--json",
                "--from-logs",
                folder.resolve("missing.csv").toString());
        assertEquals(3, run.exitCode(), run.toString());
    }

    /** The odd log is one of the reader's own cases: its columns say nothing without its layout. */
    @Test
    void a_layout_reads_the_logs_that_the_window_is_held_against() throws IOException {
        var oddity = Path.of("src/test/resources/intake/layout-file");
        var log = folder.resolve("FW-000017_2.csv");
        Files.copy(oddity.resolve("FW-000017_2.csv"), log);
        String[] alone = {"window", joint(), "--draws", "1000", "--json", "--from-logs", log.toString()};
        assertEquals(3, CommandLineRun.of(alone).exitCode());
        var with = Stream.concat(
                        Stream.of(alone),
                        Stream.of("--layout", oddity.resolve("layout.toml").toString()))
                .toArray(String[]::new);
        var run = CommandLineRun.of(with);
        assertEquals(0, run.exitCode(), run.toString());
        assertTrue(run.out().contains("\"observed\":{\"tightenings\":"), run.out());
    }

    @Test
    void a_layout_of_no_logs_is_wrong_use() throws IOException {
        var run = CommandLineRun.of("window", joint(), "--layout", "layout.toml", "--json");
        assertEquals(2, run.exitCode(), run.toString());
        assertEquals(
                "tautlog: --layout is of the logs that --from-logs names; none are named",
                run.err().strip());
    }

    @Test
    void the_terminal_says_where_each_limit_lies_in_the_observed_spread_and_how_many_fail_it() throws IOException {
        var logs = folder.resolve("line").toString();
        CommandLineRun.of("simulate", "--engines", "6", "--out", logs);
        var run = CommandLineRun.of(
                "window", joint(), "--draws", "1000", "--out", folder.toString(), "--from-logs", logs);
        assertTrue(run.out().contains("would have failed the released window by these limits alone"), run.out());
        var row = run.out()
                .lines()
                .filter(line -> line.startsWith("final torque, lower") && line.contains("released"))
                .findFirst()
                .orElseThrow();
        assertTrue(
                row.matches("final torque, lower +N·m +released +58\\.0 +[0-9.]+ +[0-9.]+ +[0-9.]+ % +\\d+ of 4\\d"),
                row);
    }

    @Test
    void too_few_draws_are_refused_in_one_sentence() throws IOException {
        var run = CommandLineRun.of("window", joint(), "--draws", "10", "--json");
        assertEquals(2, run.exitCode(), run.toString());
        assertEquals(
                "tautlog: --draws is 10; it must lie from 1000 to 10000000",
                run.err().strip());
    }

    @Test
    void a_coverage_that_is_no_share_is_the_command_lines_fault_and_not_the_specifications() throws IOException {
        var run = CommandLineRun.of("window", joint(), "--coverage", "99.73", "--json");
        assertEquals(2, run.exitCode(), run.toString());
        assertEquals(
                "tautlog: --coverage is 99.73; it is a share and must lie above 0.5 and below 1",
                run.err().strip());
    }

    private String joint() throws IOException {
        var file = folder.resolve("joint.toml");
        Files.writeString(file, SpecificationFile.write(FenwaterEngine.specification()));
        return file.toString();
    }

    /** The folder may hold the page of an earlier run; its time tells whether it was written again. */
    private static Optional<FileTime> lastWritten(Path page) throws IOException {
        return Files.exists(page) ? Optional.of(Files.getLastModifiedTime(page)) : Optional.empty();
    }
}
