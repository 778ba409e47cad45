package org.tautlog.cli.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.MadeLogs;
import org.tautlog.intake.layout.LayoutFile;

class LayoutCommandTest {
    @TempDir
    private Path folder;

    @Test
    void all_that_is_printed_is_a_layout_file_with_the_first_traces_drawn_behind_it() throws IOException {
        var run = CommandLineRun.of("layout", MadeLogs.good(folder).toString());
        assertEquals(0, run.exitCode(), run.toString());
        assertTrue(LayoutFile.read(run.out(), "out").value().isPresent(), run.out());
        assertTrue(run.out().contains("# read with it: 2 traces, 0 rejected"), run.out());
        assertTrue(run.out().contains("█"), run.out());
        assertFalse(run.out().contains("\u001b"), "no colour and no cursor movement");
    }

    @Test
    void the_written_layout_judges_the_same_as_none() throws IOException {
        var log = MadeLogs.mixed(folder);
        var before = CommandLineRun.of("judge", log.toString(), "--json").out();
        var file = folder.resolve("layout.toml");
        var run = CommandLineRun.of("layout", log.toString(), "--write", file.toString());
        assertEquals(0, run.exitCode(), run.toString());
        assertEquals(
                before, CommandLineRun.of("judge", log.toString(), "--json").out());
        assertEquals(
                2,
                CommandLineRun.of("layout", log.toString(), "--write", file.toString())
                        .exitCode());
    }

    @Test
    void the_first_traces_can_be_drawn_into_a_file() throws IOException {
        var svg = folder.resolve("traces.svg");
        var run = CommandLineRun.of("layout", MadeLogs.good(folder).toString(), "--out", svg.toString());
        assertEquals(0, run.exitCode(), run.toString());
        var text = Files.readString(svg);
        assertTrue(text.startsWith("<?xml") && text.contains("FW-000002"), text.substring(0, 200));
        assertFalse(run.out().contains("█"), run.out());
    }

    @Test
    void what_a_person_must_check_is_said_and_not_only_written() throws IOException {
        var log = Files.writeString(folder.resolve("a.csv"), "Serial,Angle (deg),Torque\nFW-1,0,1\nFW-1,1,2\n");
        var run = CommandLineRun.of(
                "layout",
                log.toString(),
                "--write",
                folder.resolve("layout.toml").toString());
        assertEquals(1, run.exitCode(), run.toString());
        assertEquals(
                1, run.out().lines().filter(line -> line.contains("NO UNIT")).count(), run.out());
    }

    @Test
    void what_is_no_table_is_exit_code_3_with_a_reason() throws IOException {
        var file = Files.writeString(folder.resolve("a.txt"), "nothing here\n");
        var run = CommandLineRun.of("layout", file.toString());
        assertEquals(3, run.exitCode(), run.toString());
        assertTrue(run.err().contains("no line names the columns"), run.err());
    }
}
