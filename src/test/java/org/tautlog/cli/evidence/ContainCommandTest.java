package org.tautlog.cli.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.Archive;
import org.tautlog.cli.ArchivedShift;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.MadeLogs;
import org.tautlog.report.paper.PdfUa;

class ContainCommandTest {
    @TempDir
    private Path folder;

    @Test
    void a_suspect_without_known_good_around_it_holds_everything() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        var run = contain(archive, "--serial", "FW-000002");
        assertEquals(1, run.exitCode(), run.toString());
        assertTrue(run.out().contains("hold 3 engines"), run.out());
        assertTrue(run.out().contains("Last known good: none in the archive."), run.out());
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

    @Test
    void page_print_list_and_json_name_the_same_engines_and_why() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        assertEquals(
                1,
                contain(archive, "--finding", "turn-short", "--clock-margin", "7")
                        .exitCode());
        var reports = folder.resolve("reports");
        var page = Files.readString(reports.resolve("containment.html"));
        var list = Files.readString(reports.resolve("containment.csv"));
        var json = new ObjectMapper().readTree(Files.readString(reports.resolve("containment.json")));
        assertEquals(3, json.get("engines").size());
        assertEquals(7, json.at("/brackets/0/clockMarginMinutes").intValue());
        assertTrue(json.at("/brackets/0/lastGood").isNull(), "an open end");
        assertEquals(List.of(), PdfUa.broken(Files.readAllBytes(reports.resolve("containment.pdf"))));
        try (var pdf = Loader.loadPDF(reports.resolve("containment.pdf").toFile())) {
            var print = new PDFTextStripper().getText(pdf);
            for (var text : List.of(page, list, print)) {
                assertTrue(text.contains("FW-000001") && text.contains("shows it"), text);
            }
            assertTrue(page.contains("Clocks may differ by 7 minutes"), "the margin on the page");
            assertTrue(print.contains("Clocks may differ by 7 minutes"), "the margin in print");
            assertTrue(print.contains("=FW<b>\"3"), "a serial like a formula, as text");
            var hash = Archive.sha256(reports.resolve("containment.csv"));
            assertTrue(page.contains(hash) && print.contains(hash), "evidence");
        }
        assertFalse(page.contains("FW<b>"), "markup from a serial");
    }

    @Test
    void json_goes_to_the_output_and_leaves_no_files() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        var run = contain(archive, "--serial", "FW-000002", "--json");
        assertEquals(1, run.exitCode(), run.toString());
        assertEquals(
                "engine FW-000002",
                new ObjectMapper().readTree(run.out()).get("suspicion").textValue());
        assertFalse(Files.exists(folder.resolve("reports")), "no files");
        assertEquals(
                2,
                contain(archive, "--serial", "FW-000002", "--clock-margin", "-1")
                        .exitCode());
    }

    private CommandLineRun contain(String archive, String... words) {
        var all = new ArrayList<>(List.of("contain", "--archive", archive, "--out"));
        all.add(folder.resolve("reports").toString());
        all.addAll(List.of(words));
        return CommandLineRun.of(all.toArray(String[]::new));
    }
}
