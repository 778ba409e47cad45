package org.tautlog.cli.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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
import org.tautlog.review.MadeShift;

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
    void an_engine_that_is_not_there_is_told_from_one_that_conforms() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.good(folder.resolve("logs")));
        var unknown = contain(archive, "--serial", "FW-00001");
        assertEquals(3, unknown.exitCode());
        assertTrue(unknown.err().contains("knows no engine FW-00001; nearest: FW-000001"), unknown.err());
        var sound = contain(archive, "--serial", "FW-000001");
        assertEquals(3, sound.exitCode());
        assertTrue(sound.err().contains("every tightening of FW-000001 conforms; to bracket one all the"), sound.err());
        var bolt = sound.err().replaceFirst("(?s).*--bolt N: ([^;]+);.*", "$1");
        var bracketed = contain(archive, "--serial", "FW-000001", "--bolt", bolt, "--no-pdf");
        assertEquals(1, bracketed.exitCode(), bracketed.toString());
        var elsewhere = contain(archive, "--serial", "FW-000001", "--bolt", "77");
        assertTrue(
                elsewhere.err().contains("has no recording of bolt 77 of FW-000001; there are " + bolt),
                elsewhere.err());
        for (var refused : List.of(unknown, sound, elsewhere)) {
            assertTrue(refused.err().contains("nothing is contained, nothing is cleared"), refused.err());
        }
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
    void a_moved_level_is_charted_and_a_word_on_it_is_on_record() throws IOException {
        var line = folder.resolve("line").toString();
        CommandLineRun.of("simulate", "--engines", "64", "--seed", "2", "--out", line);
        var archive = folder.resolve("evidence").toString();
        CommandLineRun.of("import", line, "--archive", archive);
        var around = List.of("--station", "S50", "--spindle", "4", "--around", "2026-03-17T10:30+01:00", "--no-pdf");
        assertEquals(1, contain(archive, around.toArray(String[]::new)).exitCode());
        var page = page();
        assertTrue(page.contains("aria-label=\"final torque on S50/4, n = "), "a chart");
        assertTrue(page.contains(">level moved") || page.contains("level moved<"), "the step by name");
        var moved = new ObjectMapper()
                .readTree(folder.resolve("reports/containment.json").toFile())
                .at("/brackets/0/change");
        var earliest = moved.get("earliestSerial").asText();
        assertTrue(
                page.contains("(between " + earliest + " and "
                        + moved.get("latestSerial").asText() + ", 95 %)"),
                "engines, as the report of the shift names them");
        assertTrue(page.contains("from " + earliest + " on none is known good"), page);
        assertTrue(page.contains("<td class=\"id\">" + earliest + "</td>"), "so the earliest is held");
        var word = new ArrayList<>(around);
        word.addAll(List.of("--explained-by", "A. <b>Reviewer", "--explanation", "new transducer"));
        word.addAll(List.of("--explained-from", "2026-03-17T09:51+01:00"));
        assertEquals(1, contain(archive, word.toArray(String[]::new)).exitCode());
        assertTrue(page().contains("as A. &lt;b&gt;Reviewer states: “new transducer”"), "whose word, as text");
        assertTrue(page().contains(">explained") || page().contains("explained<"), "and where it holds from");
        word.set(word.size() - 1, "2026-03-17T08:00+01:00");
        var wrong = contain(archive, word.toArray(String[]::new));
        assertEquals(2, wrong.exitCode());
        assertTrue(wrong.err().contains("that word explains nothing, and nothing is written"), wrong.err());
        assertTrue(
                wrong.err().contains("; a word may explain a step of final torque on S50/4 from 2026-03-17T"),
                wrong.err());
        word.set(word.size() - 1, "2026-03-17T10:00+01:00");
        assertEquals(1, contain(archive, word.toArray(String[]::new)).exitCode());
        assertTrue(page().contains("open to the end of the archive"), "the word meets another level only");
        assertTrue(page().contains("That word does not explain it: one with a moment from 2026-03-17"), page());
        assertFalse(page().contains("It counts as moved up to the moment of that word"), "its own level");
        assertEquals(2, contain(archive, "--lot", "A17", "--explained-by", "A").exitCode(), "a word in part");
    }

    @Test
    void what_was_decided_about_a_held_engine_stands_beside_it() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        var accept = List.of("--archive", archive, "--by", "<i>A", "--reason", "measured by hand");
        for (var action : List.of("quarantine", "accept")) {
            var words = new ArrayList<>(List.of("decide", "FW-000002", action));
            words.addAll(accept);
            assertEquals(0, CommandLineRun.of(words.toArray(String[]::new)).exitCode());
        }
        contain(archive, "--finding", "turn-short", "--no-pdf");
        var rows = Files.readAllLines(folder.resolve("reports/containment.csv"));
        assertTrue(rows.get(0).endsWith(",decisions"), rows.get(0));
        assertEquals(
                1,
                rows.stream()
                        .filter(row ->
                                row.startsWith("FW-000002,") && row.endsWith(",\"whole engine: accept, by <i>A\""))
                        .count(),
                rows.toString());
        assertTrue(page().contains("<td>whole engine: accept, by &lt;i&gt;A</td>"), "on the page, as text");
        var json = new ObjectMapper().readTree(Files.readString(folder.resolve("reports/containment.json")));
        assertEquals(1, json.get("decisions").size(), "what was superseded is left out");
        assertEquals("measured by hand", json.at("/decisions/0/reason").asText());
    }

    @Test
    void a_moment_far_from_every_tightening_is_told_how_far() throws IOException {
        var archive = ArchivedShift.simulated(folder);
        var spindle = List.of("--station", "S50", "--spindle", "4", "--json", "--around");
        var far = new ArrayList<>(spindle);
        far.add("2030-01-01T00:00Z");
        var told = suspicion(archive, far);
        assertTrue(
                told.matches("spindle S50/4 around 2030-01-01T00:00Z, \\d+ hours from the nearest tightening"), told);
        var close = new ArrayList<>(spindle);
        close.add(firstTime(archive));
        assertFalse(suspicion(archive, close).contains("nearest"), "at a tightening");
    }

    private String suspicion(String archive, List<String> words) throws IOException {
        return new ObjectMapper()
                .readTree(contain(archive, words.toArray(String[]::new)).out())
                .get("suspicion")
                .asText();
    }

    private String firstTime(String archive) throws IOException {
        var words = new String[] {"--station", "S50", "--spindle", "4", "--json", "--around", "2026-03-17T06:30+01:00"};
        return new ObjectMapper()
                .readTree(contain(archive, words).out())
                .at("/brackets/0/contained/0/judgement/time")
                .asText();
    }

    @Test
    void the_list_has_a_row_for_each_engine() throws IOException {
        var archive = ArchivedShift.simulated(folder);
        contain(archive, "--lot", "A17", "--no-pdf");
        var page = page();
        var rows = Files.readAllLines(folder.resolve("reports/containment.csv"));
        assertEquals(6, page.split("<td class=\"id\">", -1).length - 1, "six engines");
        assertTrue(rows.size() > 6 * 8, "every tightening is in the table");
        assertTrue(page.contains("1, 2, 3, 4, 5, 6, 7, 8"), "their bolts together");
    }

    @Test
    void a_batch_that_does_not_count_is_told_in_every_report() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        ArchivedShift.of(folder, MadeLogs.write(folder.resolve("more"), List.of(MadeShift.named("FW-000009", 300))));
        lengthen(Path.of(archive), "more/S40.csv");
        var run = contain(archive, "--finding", "turn-short");
        var told = "bytes instead of ";
        assertTrue(run.out().contains(told) && run.out().contains("so that the list may lack engines"), run.out());
        assertEquals("", run.err(), "told once");
        var reports = folder.resolve("reports");
        assertTrue(page().contains(told) && page().contains("What may be missing?"), "on the page");
        var json = new ObjectMapper().readTree(Files.readString(reports.resolve("containment.json")));
        assertTrue(
                json.at("/problems/0").asText().contains(told),
                json.at("/problems").toString());
        try (var pdf = Loader.loadPDF(reports.resolve("containment.pdf").toFile())) {
            assertTrue(new PDFTextStripper().getText(pdf).contains(told), "in print");
        }
        var none = contain(archive, "--finding", "weak-bolt");
        assertTrue(none.exitCode() == 3 && none.err().contains(told), none.toString());
    }

    private static void lengthen(Path archive, String source) throws IOException {
        try (var batches = Files.list(archive.resolve("batches"))) {
            for (var batch : batches.toList()) {
                if (Files.readString(batch.resolve("manifest.json")).contains(source)) {
                    Files.write(batch.resolve("judgements-1.parquet"), new byte[2], StandardOpenOption.APPEND);
                }
            }
        }
    }

    private String page() throws IOException {
        return Files.readString(folder.resolve("reports/containment.html"));
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
