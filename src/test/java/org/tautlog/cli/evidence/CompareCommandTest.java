package org.tautlog.cli.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.Archive;
import org.tautlog.cli.ArchivedShift;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.MadeLogs;
import org.tautlog.review.MadeShift;

class CompareCommandTest {
    @TempDir
    private Path folder;

    @Test
    void a_specification_compared_with_itself_changes_nothing() throws IOException {
        var log = MadeLogs.mixed(folder.resolve("logs"));
        var spec = folder.resolve("logs/joint.toml").toString();
        var run = CommandLineRun.of("compare", spec, spec, log.toString(), "--out", out());
        assertEquals(0, run.exitCode(), run.toString());
        assertTrue(run.out().contains("0 verdicts change, on 0 engines"), run.out());
    }

    @Test
    void a_wider_turn_lets_short_ones_through_and_names_them() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        var spec = folder.resolve("logs/joint.toml");
        var text = Files.readString(spec);
        var wider = Files.writeString(folder.resolve("wider.toml"), wider(text));
        var run = CommandLineRun.of("compare", spec.toString(), wider.toString(), "--archive", archive, "--out", out());
        assertEquals(1, run.exitCode(), run.toString());
        assertTrue(run.out().contains("2 verdicts change, on 2 engines"), run.out() + text);
        try (var table = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(Files.newBufferedReader(folder.resolve("reports/comparison.csv")))) {
            var rows = table.getRecords();
            assertEquals(2, rows.size());
            assertTrue(rows.stream().anyMatch(row -> row.get("serial").equals("'=FW<b>\"3")), rows.toString());
            rows.forEach(row -> assertEquals("nonconforming", row.get("firstVerdict")));
        }
    }

    @Test
    void what_an_altered_archive_keeps_out_of_it_stands_in_the_table() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        var spec = folder.resolve("logs/joint.toml").toString();
        try (var batches = Files.list(Path.of(archive, "batches"))) {
            Files.delete(batches.findFirst().orElseThrow().resolve("judgements-1.parquet"));
        }
        ArchivedShift.of(folder, MadeLogs.write(folder.resolve("more"), List.of(MadeShift.named("FW-000009", 300))));
        assertEquals(
                1,
                CommandLineRun.of("compare", spec, spec, "--archive", archive, "--out", out())
                        .exitCode());
        var table = Files.readString(folder.resolve("reports/comparison.csv"));
        assertTrue(table.contains("the file is missing; its batch does not count"), table);
    }

    @Test
    void two_files_under_one_version_are_told_apart_by_their_hashes() throws IOException {
        var log = MadeLogs.mixed(folder.resolve("logs"));
        var spec = folder.resolve("logs/joint.toml");
        var text = Files.readString(spec);
        var other = Files.writeString(folder.resolve("other.toml"), text + "# another hand\n");
        var run = CommandLineRun.of("compare", spec.toString(), other.toString(), log.toString(), "--out", out());
        assertTrue(run.out().contains("two files of different contents both call themselves "), run.out());
        for (var file : List.of(spec, other)) {
            assertTrue(run.out().contains(Archive.sha256(file)), run.out());
        }
        var copy = Files.writeString(folder.resolve("copy.toml"), text);
        var same = CommandLineRun.of("compare", spec.toString(), copy.toString(), log.toString(), "--out", out());
        assertFalse(same.out().contains("different contents"), same.out());
    }

    private static String wider(String text) {
        return text.replaceAll("(?m)^version = .*$", "version = \"4\"")
                .replace("345", "200")
                .replace("70", "20");
    }

    private String out() {
        return folder.resolve("reports").toString();
    }
}
