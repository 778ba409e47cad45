package org.tautlog.cli.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.intake.specification.SpecificationFile;

class TuneCommandTest {
    private static final String START = "onset-ratio = 0.5\nelastic-ratio = 0.67";

    @TempDir
    private static Path folder;

    private static String trial = "";
    private static String outcomes = "";

    @BeforeAll
    static void simulate() {
        trial = folder.resolve("trial").toString();
        outcomes = trial + "/outcomes.csv";
        CommandLineRun.of("simulate", "--trial", "--engines", "4", "--out", trial);
    }

    @Test
    void from_a_shifted_start_it_proposes_lines_that_read_back_and_leaves_the_specification_alone() throws IOException {
        var specification = folder.resolve("shifted.toml");
        var text = Files.readString(Path.of(trial, "joint.toml"))
                .replace(START, "onset-ratio = 0.8\nelastic-ratio = 0.85");
        Files.writeString(specification, text);
        var run = CommandLineRun.of("tune", trial, "--outcomes", outcomes, "--spec", specification.toString());
        assertEquals(0, run.exitCode(), run.err());
        assertEquals(text, Files.readString(specification));
        var lines = run.out()
                .substring(run.out().indexOf("\n[reading]\n") + 11)
                .lines()
                .toList();
        assertTrue(lines.get(0).startsWith("onset-ratio = 0.5"), run.out());
        var proposed = folder.resolve("proposed.toml");
        Files.writeString(proposed, text.replace("onset-ratio = 0.8", lines.get(0)));
        assertTrue(SpecificationFile.read(proposed).value().isPresent());
    }

    @Test
    void the_same_input_gives_the_same_words_and_another_seed_moves_the_interval_alone() throws IOException {
        var once = CommandLineRun.json("tune", trial, "--outcomes", outcomes);
        assertEquals(once, CommandLineRun.json("tune", trial, "--outcomes", outcomes));
        var other = CommandLineRun.json("tune", trial, "--outcomes", outcomes, "--seed", "2");
        assertEquals(once.at("/criteria/0/tuned/standing"), other.at("/criteria/0/tuned/standing"));
        assertEquals(11.52, once.get("offsetDeg").asDouble());
        assertFalse(once.get("tooFew").asBoolean());
    }

    @Test
    void few_traces_are_said_to_be_no_ground_for_a_change() throws IOException {
        var few = folder.resolve("few.csv");
        try (var rows = Files.lines(Path.of(outcomes))) {
            Files.writeString(few, rows.limit(1 + 40 * 6).collect(Collectors.joining("\n")));
        }
        var run = CommandLineRun.of("tune", trial, "--outcomes", few.toString());
        assertTrue(run.out().contains("Too few: 6 traces with a measured onset, at least 20 are needed."), run.out());
    }

    @Test
    void outcomes_among_the_logs_are_no_log_and_that_is_said() throws IOException {
        var layout = Path.of(trial, "layout.toml");
        var text = Files.readString(layout);
        Files.delete(layout);
        try {
            var run = CommandLineRun.of("tune", trial, "--outcomes", outcomes);
            assertTrue(run.err().contains("not read as a log: " + outcomes), run.err());
            assertFalse(run.err().contains("outcomes.csv:"), run.err());
        } finally {
            Files.writeString(layout, text);
        }
    }

    @Test
    void bad_rows_are_told_and_change_the_exit_code_and_a_bad_file_is_refused() throws IOException {
        var bad = folder.resolve("bad.csv");
        Files.writeString(bad, Files.readString(Path.of(outcomes)) + "FW-000001,2,1,far,12\n");
        var run = CommandLineRun.of("tune", trial, "--outcomes", bad.toString());
        assertEquals(1, run.exitCode());
        assertTrue(run.err().contains("(angle-deg): 'far' is no number"), run.err());
        Files.writeString(bad, "serial,bolt\nFW-000001,2\n");
        var refused = CommandLineRun.of("tune", trial, "--outcomes", bad.toString());
        assertEquals(2, refused.exitCode());
        assertTrue(refused.err().contains("no column 'angle-deg', 'clamp-load-kN'"), refused.err());
        assertEquals(
                2,
                CommandLineRun.of("tune", trial, "--outcomes", outcomes, "--offset", "0")
                        .exitCode());
    }

    @Test
    void measurements_of_other_bolts_leave_nothing_to_tune_on() throws IOException {
        var foreign = folder.resolve("foreign.csv");
        Files.writeString(foreign, "serial,bolt,angle-deg,clamp-load-kN\n<b>,1,1200,12\n");
        var run = CommandLineRun.of("tune", trial, "--outcomes", foreign.toString());
        assertEquals(3, run.exitCode());
        assertTrue(run.out().contains("measured, but in none of the logs: 1"), run.out());
        assertTrue(run.out().contains("Nothing to change under [reading]."), run.out());
        assertFalse(run.out().contains("too late"), run.out());
    }
}
