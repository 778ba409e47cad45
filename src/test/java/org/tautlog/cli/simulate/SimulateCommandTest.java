package org.tautlog.cli.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.LogFolder;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.intake.table.OutcomeFile;
import org.tautlog.line.FenwaterEngine;

class SimulateCommandTest {
    @TempDir
    Path temp;

    @Test
    void writes_logs_truth_and_the_files_that_reading_needs() throws IOException {
        var folder = simulate("3", "1", "three");
        var files = LogFolder.of(folder).files().keySet();
        assertTrue(files.contains("S40/2026-03-17_06h.csv.gz"), files.toString());
        assertTrue(files.contains("S50/shift-001_early.zip!000001_FW-000001_b6_a1.csv"), files.toString());
        assertEquals(4, files.stream().filter(name -> !name.startsWith("S50")).count(), files.toString());
        assertEquals(
                "serial,station", Files.readString(folder.resolve("truth.csv")).substring(0, 14));
        assertTrue(Files.readAllLines(folder.resolve("truth.csv")).size() > 3 * FenwaterEngine.BOLTS);
    }

    @Test
    void a_trial_has_the_clamp_loads_measured_on_its_sound_bolts_beside_the_logs() throws IOException {
        var folder = temp.resolve("trial");
        CommandLineRun.of("simulate", "--trial", "--engines", "2", "--out", folder.toString());
        var measured = OutcomeFile.read(folder.resolve("outcomes.csv")).value().orElseThrow();
        assertEquals(0, measured.rejected());
        assertEquals(40 * measured.measured().size(), measured.rows());
        assertTrue(Files.readString(folder.resolve("layout.toml")).contains("outcomes.csv"));
        assertFalse(Files.exists(simulate("1", "1", "plain").resolve("outcomes.csv")));
    }

    @Test
    void the_specification_beside_the_logs_reads_back() throws IOException {
        var read = SpecificationFile.read(simulate("1", "1", "one").resolve("joint.toml"));
        assertEquals(FenwaterEngine.specification(), read.value().orElseThrow());
    }

    @Test
    void the_second_half_of_a_shift_is_written_in_the_signs_of_another_country() throws IOException {
        var late = simulate("33", "1", "late").resolve("S50/shift-001_late.csv.gz");
        try (var bytes = new GZIPInputStream(Files.newInputStream(late))) {
            var lines = new String(bytes.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            assertTrue(lines.get(0).startsWith("Trace;Serial;Station"), lines.get(0));
            assertTrue(lines.get(1).contains(";0 0,002 0,004 "), lines.get(1).substring(0, 80));
            assertFalse(lines.get(1).contains("."), "a point in a number");
        }
    }

    @Test
    void one_seed_gives_one_set_of_bytes_and_another_seed_another() throws IOException {
        var once = LogFolder.of(simulate("2", "5", "once"));
        assertEquals(once, LogFolder.of(simulate("2", "5", "again")));
        assertNotEquals(once, LogFolder.of(simulate("2", "6", "other")));
    }

    @Test
    void a_folder_that_holds_something_is_left_alone() throws IOException {
        Files.writeString(temp.resolve("mine.txt"), "mine");
        var run = CommandLineRun.of("simulate", "--out", temp.toString());
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("is not empty"), run.err());
        try (var left = Files.list(temp)) {
            assertEquals(1, left.count());
        }
    }

    @Test
    void a_line_without_engines_is_wrong_use() {
        var run = CommandLineRun.of(
                "simulate", "--engines", "0", "--out", temp.resolve("none").toString());
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("--engines is 0"), run.err());
    }

    private Path simulate(String engines, String seed, String name) {
        var folder = temp.resolve(name);
        var run = CommandLineRun.of("simulate", "--engines", engines, "--seed", seed, "--out", folder.toString());
        assertEquals(0, run.exitCode(), run.err());
        return folder;
    }
}
