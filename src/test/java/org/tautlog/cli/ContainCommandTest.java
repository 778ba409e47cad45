package org.tautlog.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContainCommandTest {
    @TempDir
    private Path folder;

    @Test
    void a_suspect_without_known_good_around_it_holds_everything() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        var run = contain(archive, "--serial", "FW-000002");
        assertEquals(1, run.exitCode(), run.toString());
        assertTrue(run.out().contains("hold 3 engines"), run.out());
        assertTrue(run.out().contains("last known good: none in the archive"), run.out());
    }

    @Test
    void a_formula_for_a_serial_is_text_in_the_list() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.write(folder.resolve("logs"), ArchivedShift.hostile()));
        contain(archive, "--finding", "turn-short");
        var list = Files.readString(folder.resolve("reports/containment.csv"));
        assertTrue(list.contains("'=HYPERLINK"), list);
    }

    @Test
    void nothing_found_is_not_a_pass() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.good(folder.resolve("logs")));
        assertEquals(3, contain(archive, "--finding", "weak-bolt").exitCode());
        assertEquals(3, contain(archive, "--lot", "nowhere").exitCode());
        assertEquals(2, contain(archive, "--finding", "no-such").exitCode());
        assertEquals(2, contain(archive, "--lot", "A", "--serial", "B").exitCode());
    }

    private CommandLineRun contain(String archive, String... words) {
        var all = new ArrayList<>(List.of("contain", "--archive", archive, "--out"));
        all.add(folder.resolve("reports").toString());
        all.addAll(List.of(words));
        return CommandLineRun.of(all.toArray(String[]::new));
    }
}
