package org.tautlog.cli.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.MadeLogs;
import org.tautlog.joint.window.FindingCode;

class ShiftCommandTest {
    @TempDir
    private Path folder;

    @Test
    void a_shift_leaves_a_page_and_a_table_and_says_where() throws IOException {
        var log = MadeLogs.mixed(folder.resolve("logs"));
        var out = folder.resolve("reports");
        var run = CommandLineRun.of("shift", log.toString(), "--out", out.toString());
        assertEquals(1, run.exitCode(), run.toString());
        for (var line : List.of("report: shift.html", "PDF: shift.pdf", "CSV: verdicts.csv", "JSON: shift.json")) {
            var file = out.resolve(line.substring(line.indexOf(' ') + 1));
            assertTrue(run.out().contains(line.substring(0, line.indexOf(' ') + 1) + file), run.out());
        }
        assertTrue(run.out().contains("3 tightenings on 3 engines"), run.out());
        var names = new TreeSet<String>();
        try (var files = Files.list(out)) {
            files.forEach(file -> names.add(file.getFileName().toString()));
        }
        assertEquals("[shift.html, shift.json, shift.pdf, verdicts.csv]", names.toString());
    }

    @Test
    void a_shift_compared_with_itself_by_logs_or_by_table_shows_no_change() throws IOException {
        var logs = folder.resolve("logs");
        CommandLineRun.of("simulate", "--engines", "14", "--out", logs.toString());
        var out = folder.resolve("one");
        CommandLineRun.of("shift", logs.toString(), "--out", out.toString());
        for (var previous : new Path[] {logs, out.resolve("verdicts.csv")}) {
            var again = folder.resolve("again");
            CommandLineRun.of("shift", logs.toString(), "--out", again.toString(), "--previous", previous.toString());
            var page = Files.readString(again.resolve("shift.html"));
            assertTrue(page.contains("Since the earlier shift: no level or spread changed for certain."), "the answer");
            assertTrue(Files.readString(again.resolve("shift.json")).contains("\"levelAdjustedP\" : 1"), "compared");
        }
    }

    @Test
    void an_earlier_shift_that_is_no_table_is_refused() throws IOException {
        var log = MadeLogs.good(folder.resolve("logs"));
        var wrong = Files.writeString(folder.resolve("verdicts-old.csv"), "a,b\n1,2\n");
        var run = CommandLineRun.of("shift", log.toString(), "--previous", wrong.toString());
        assertEquals(3, run.exitCode(), run.toString());
        assertTrue(run.err().contains("no column 'verdict'"), run.err());
    }

    @Test
    void text_from_a_log_stays_text_in_page_and_table() throws IOException {
        var log = MadeLogs.mixed(folder.resolve("logs"));
        var out = folder.resolve("reports");
        CommandLineRun.of("shift", log.toString(), "--out", out.toString());
        var page = Files.readString(out.resolve("shift.html"));
        assertFalse(page.contains("FW<b>"), "markup from a log");
        assertTrue(page.contains("=FW&lt;b&gt;&quot;3"), "the serial as text");
        var rows = verdicts(out);
        assertEquals(3, rows.size());
        assertEquals("'=FW<b>\"3", rows.get(2).get("serial"));
        assertEquals("nonconforming", rows.get(1).get("verdict"));
    }

    @Test
    void a_run_that_reads_nothing_leaves_no_report_and_no_half_file() throws IOException {
        MadeLogs.good(folder);
        var out = folder.resolve("reports");
        var junk = Files.writeString(folder.resolve("junk.csv"), "no heading\nno numbers\n");
        var run = CommandLineRun.of("shift", junk.toString(), "--out", out.toString());
        assertEquals(3, run.exitCode(), run.toString());
        try (var files = Files.list(out)) {
            assertEquals(0, files.count());
        }
    }

    @Test
    void a_second_run_replaces_the_first() throws IOException {
        var out = folder.resolve("reports");
        var bad = MadeLogs.mixed(folder.resolve("bad"));
        var good = MadeLogs.good(folder.resolve("good"));
        assertEquals(
                1,
                CommandLineRun.of("shift", bad.toString(), "--out", out.toString())
                        .exitCode());
        assertEquals(
                0,
                CommandLineRun.of("shift", good.toString(), "--out", out.toString())
                        .exitCode());
        assertTrue(
                Files.readString(out.resolve("shift.html")).contains("No tightening was found nonconforming."),
                "the second run's page");
    }

    @Test
    void an_output_folder_that_is_a_file_is_wrong_use() throws IOException {
        var log = MadeLogs.good(folder);
        assertEquals(
                2,
                CommandLineRun.of("shift", log.toString(), "--out", log.toString())
                        .exitCode());
        assertEquals(
                2, CommandLineRun.of("shift", log.toString(), "--list", "0").exitCode());
    }

    @Test
    void the_logs_of_a_simulated_line_are_reviewed_with_what_lies_beside_them() {
        var logs = folder.resolve("logs");
        assertEquals(
                0,
                CommandLineRun.of("simulate", "--engines", "2", "--out", logs.toString())
                        .exitCode());
        var run = CommandLineRun.of(
                "shift", logs.toString(), "--out", folder.resolve("reports").toString());
        assertTrue(run.exitCode() <= 1, run.toString());
        assertTrue(run.out().contains("tightenings on 2 engines"), run.out());
        assertFalse(run.err().contains("truth.csv"), run.err());
    }

    @Test
    void a_folder_that_cannot_be_made_is_wrong_use_and_names_the_way_out() throws IOException {
        var log = MadeLogs.good(folder);
        var run = CommandLineRun.of(
                "shift", log.toString(), "--out", log.resolve("below").toString());
        assertEquals(2, run.exitCode(), run.toString());
        assertTrue(run.err().contains("name one with --out DIR"), run.err());
    }

    @Test
    void every_finding_that_leads_is_named_in_the_answers() throws IOException {
        var out = folder.resolve("reports");
        CommandLineRun.of("shift", "sample-logs", "--out", out.toString());
        var page = Files.readString(out.resolve("shift.html"));
        var answers = page.substring(page.indexOf("<dl class=\"answers\">"), page.indexOf("</dl>"))
                .toLowerCase(Locale.ROOT);
        for (var row : verdicts(out)) {
            var code = FindingCode.parse(row.get("findings").split(" ", 2)[0]);
            if (!row.get("verdict").equals("conforming")) {
                assertTrue(
                        answers.contains(code.orElseThrow().title().toLowerCase(Locale.ROOT)),
                        row.get("serial") + " " + row.get("findings"));
            }
        }
    }

    private static List<CSVRecord> verdicts(Path out) throws IOException {
        try (var table = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(Files.newBufferedReader(out.resolve("verdicts.csv")))) {
            return table.getRecords();
        }
    }
}
