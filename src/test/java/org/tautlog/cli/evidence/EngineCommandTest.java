package org.tautlog.cli.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
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

class EngineCommandTest {
    @TempDir
    private Path folder;

    @Test
    void an_engine_whose_every_position_conforms_is_sound() throws IOException {
        var archive = ArchivedShift.simulated(folder);
        var run = CommandLineRun.of("engine", "FW-000001", "--archive", archive, "--out", out());
        assertEquals(0, run.exitCode(), run.toString());
        assertTrue(run.out().startsWith("FW-000001: 8 tightenings on 8 bolt positions"), run.out());
        assertTrue(run.out().contains("Yes, as far as its traces tell"), run.out());
        assertTrue(run.out().contains("Looked at: 40 tightenings of 5 other engines within 12 hours."), run.out());
        var page = Files.readString(folder.resolve("reports/engine-FW-000001.html"));
        assertTrue(page.contains("Is this engine sound?"), "the reader's question");
        assertTrue(page.contains("Estimated, never measured."), "the limit of the method");
        assertTrue(page.indexOf("<article id=\"t8\"") > 0, "a trace for each bolt");
        assertTrue(page.contains("The head from above, to scale"), "places are stated");
        assertTrue(page.contains("Plan of the head. bolt 1 at 24, 118 mm: conforming, "), "in words as well");
    }

    @Test
    void half_an_engine_is_not_sound() throws IOException {
        var logs = folder.resolve("line");
        CommandLineRun.of("simulate", "--engines", "6", "--out", logs.toString());
        var archive = folder.resolve("evidence").toString();
        var run = CommandLineRun.of(
                "import", logs.resolve("S40").toString(), "--spec", logs + "/joint.toml", "--archive", archive);
        assertEquals(0, run.exitCode(), run.toString());
        run = CommandLineRun.of("engine", "FW-000001", "--archive", archive, "--out", out(), "--no-pdf");
        assertEquals(1, run.exitCode(), run.toString());
        assertTrue(run.out().contains("Not known. Treat it as suspect"), run.out());
        assertTrue(
                run.out().matches("(?s).*No recording of (Bolt \\d, ){3}Bolt \\d, which the specification states.*"),
                run.out());
        var rows = Files.readAllLines(folder.resolve("reports/engine-FW-000001.csv"));
        var page = Files.readString(folder.resolve("reports/engine-FW-000001.html"));
        assertTrue(page.contains("bolt 5 at 24, 22 mm: no recording;"), "drawn where it should be");
        assertEquals(4, page.split("stroke-dasharray=\"3 3\"", -1).length - 1, "four dashed circles");
        assertEquals(9, rows.size(), "the header, four bolts and the four that have no recording");
        assertEquals(4, rows.stream().filter(row -> row.endsWith(",conforming")).count(), rows.toString());
        assertEquals(
                4, rows.stream().filter(row -> row.endsWith(",no recording")).count(), rows.toString());
    }

    @Test
    void positions_that_no_specification_states_are_told_as_not_known() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.good(folder.resolve("logs")));
        var run = CommandLineRun.of("engine", "FW-000001", "--archive", archive, "--json");
        assertEquals(0, run.exitCode(), run.toString());
        var unknown = json(run).get("unknown").toString();
        assertTrue(unknown.contains("How many bolt positions it has: the specification does not state them"), unknown);
        CommandLineRun.of("engine", "FW-000001", "--archive", archive, "--out", out(), "--no-pdf");
        var page = Files.readString(folder.resolve("reports/engine-FW-000001.html"));
        assertTrue(page.contains("does not state where they lie, so this is their order and not their place."));
    }

    @Test
    void an_engine_with_a_short_turn_is_not_and_names_the_bolt() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        var run = CommandLineRun.of("engine", "FW-000002", "--archive", archive, "--out", out());
        assertEquals(1, run.exitCode(), run.toString());
        assertTrue(run.out().contains("No. Hold it until a qualified person has decided."), run.out());
        assertTrue(run.out().contains("nonconforming, turn too short"), run.out());
    }

    @Test
    void an_absent_engine_ends_with_3_and_the_nearest_serials() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        var run = CommandLineRun.of("engine", "FW-00002", "--archive", archive, "--out", out());
        assertEquals(3, run.exitCode());
        assertTrue(run.err().contains("the archive knows no engine FW-00002; nearest: FW-000002"), run.err());
        assertFalse(Files.exists(folder.resolve("reports")), "no report of nothing");
    }

    @Test
    void decisions_stand_in_the_dossier_and_superseded_ones_stay() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        decide(archive, "FW-000002", "quarantine", "<i>short</i>");
        decide(archive, "FW-000002", "accept", "=1+1 measured by hand");
        var run = CommandLineRun.of("engine", "FW-000002", "--archive", archive, "--json");
        var dossier = json(run);
        assertEquals(0, run.exitCode(), run.toString());
        assertEquals("sound-by-decision", dossier.get("soundness").textValue());
        var sound = dossier.get("sound");
        assertEquals(2, sound.size(), "the covered bolt with its decision, told once: " + sound);
        assertTrue(
                sound.get(1)
                        .asText()
                        .matches(
                                "Bolt \\S+ \\(S40\\): nonconforming, turn too short \\(.*\\)\\. Decided: Accept, .*by hand”\\."),
                sound.toString());
        assertEquals(dossier.at("/decisions/1/entry"), dossier.at("/positions/0/decidedBy"));
        assertEquals(2, dossier.get("decisions").size());
        assertFalse(dossier.get("decisions").get(0).get("stands").booleanValue());
        assertTrue(dossier.get("decisions").get(1).get("stands").booleanValue());
        CommandLineRun.of("engine", "FW-000002", "--archive", archive, "--out", out());
        var page = Files.readString(folder.resolve("reports/engine-FW-000002.html"));
        assertFalse(page.contains("<i>short"), "markup from a person");
        assertTrue(page.contains("&lt;i&gt;short"), "a reason as text");
        assertTrue(page.contains("href=\"#m-decided\"/></svg>decided"), "a mark of its own");
        assertTrue(page.contains("flag</span>: the verdict leaves something open"), "and its key");
    }

    @Test
    void a_hostile_serial_stays_text_everywhere() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.write(folder.resolve("logs"), ArchivedShift.hostile()));
        for (var serial : ArchivedShift.HOSTILE) {
            var run = CommandLineRun.of("engine", serial, "--archive", archive, "--out", out());
            assertTrue(run.exitCode() <= 1, run.toString());
            var parsed = json(CommandLineRun.of("engine", serial, "--archive", archive, "--json"));
            assertEquals(serial, parsed.get("serial").textValue());
        }
        var names = new TreeSet<String>();
        try (var files = Files.walk(folder.resolve("reports"))) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                names.add(file.getFileName().toString());
                if (file.toString().endsWith(".html")) {
                    assertFalse(Files.readString(file).contains("<script>"), file.toString());
                }
            }
        }
        assertEquals(4 * ArchivedShift.HOSTILE.size(), names.size(), names.toString());
        names.forEach(name -> assertTrue(name.matches("engine-[A-Za-z0-9._-]+\\.(html|pdf|csv|json)"), name));
    }

    @Test
    void page_print_table_and_json_stand_side_by_side_and_agree() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        assertEquals(
                1,
                CommandLineRun.of("engine", "FW-000002", "--archive", archive, "--out", out())
                        .exitCode());
        var beside = folder.resolve("reports");
        var json = new ObjectMapper().readTree(Files.readString(beside.resolve("engine-FW-000002.json")));
        var html = Files.readString(beside.resolve("engine-FW-000002.html"));
        var table = beside.resolve("engine-FW-000002.csv");
        assertEquals(List.of(), PdfUa.broken(Files.readAllBytes(beside.resolve("engine-FW-000002.pdf"))));
        var print = print(beside.resolve("engine-FW-000002.pdf"));
        var hash = Archive.sha256(table);
        assertTrue(html.contains(hash) && print.contains("engine-FW-000002.csv, sha-256 " + hash), "evidence " + hash);
        try (var rows = CSVParser.parse(
                Files.readString(table),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            int compared = 0;
            for (var row : rows) {
                var attempt = json.at("/positions/" + compared + "/attempts/0/judgement");
                var torque = row.get("finalTorqueNm");
                assertEquals(
                        attempt.at("/signature/finalTorqueNm").asDouble(), Double.parseDouble(torque), "in the JSON");
                var shown = String.format(Locale.ROOT, "%.1f", Double.parseDouble(torque));
                assertTrue(print.contains("final torque " + shown + " N·m"), "in print: " + shown);
                assertTrue(html.contains(">" + shown + "</td>"), "on the page: " + shown);
                assertEquals(attempt.at("/verdict").asText(), row.get("verdict"));
                compared++;
            }
            assertEquals(json.at("/positions").size(), compared, "bolts compared");
        }
    }

    @Test
    void a_dossier_without_print_leaves_no_print_of_an_earlier_state() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        CommandLineRun.of("engine", "FW-000002", "--archive", archive, "--out", out());
        assertTrue(Files.exists(folder.resolve("reports/engine-FW-000002.pdf")), "printed");
        CommandLineRun.of("engine", "FW-000002", "--archive", archive, "--out", out(), "--no-pdf");
        assertFalse(Files.exists(folder.resolve("reports/engine-FW-000002.pdf")), "a stale print");
    }

    @Test
    void an_archive_that_was_altered_or_has_lost_a_batch_calls_no_engine_sound() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.good(folder.resolve("logs")));
        ArchivedShift.of(folder, MadeLogs.write(folder.resolve("more"), List.of(MadeShift.named("FW-000009", 362))));
        decide(archive, "FW-000001", "quarantine", "bolt 3 short");
        assertTrue(engine(archive, 1).contains("held back by a recorded decision"), "as kept");
        var ledger = Path.of(archive, "ledger.jsonl");
        var chain = Files.readString(ledger);
        Files.writeString(ledger, chain.replace("bolt 3 short", "bolt 3 shirt"));
        assertTrue(engine(archive, 1).contains("Not known. Treat it as suspect"), "the quarantine was altered");
        Files.writeString(ledger, chain.substring(0, chain.strip().lastIndexOf('\n') + 1));
        assertTrue(engine(archive, 0).contains("Yes, as far as its traces tell"), "whole, without a quarantine");
        lose(archive, "more/S40.csv");
        var lost = engine(archive, 1);
        assertTrue(lost.contains("Not known. Treat it as suspect"), "another batch is lost: " + lost);
        assertTrue(lost.contains("The archive is not as it was kept"), lost);
    }

    private void lose(String archive, String source) throws IOException {
        try (var batches = Files.list(Path.of(archive, "batches"))) {
            for (var batch : batches.toList()) {
                if (Files.readString(batch.resolve("manifest.json")).contains(source)) {
                    Files.move(batch, folder.resolve("lost"));
                }
            }
        }
    }

    private String engine(String archive, int exitCode) {
        var run = CommandLineRun.of("engine", "FW-000001", "--archive", archive, "--out", out(), "--no-pdf");
        assertEquals(exitCode, run.exitCode(), run.toString());
        return run.out();
    }

    private static String print(Path file) throws IOException {
        try (var pdf = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    private static JsonNode json(CommandLineRun run) throws IOException {
        return new ObjectMapper().readTree(run.out());
    }

    private static void decide(String archive, String serial, String action, String reason) {
        var words = List.of("decide", serial, action, "--archive", archive, "--by", "A. Reviewer", "--reason", reason);
        assertEquals(0, CommandLineRun.of(words.toArray(String[]::new)).exitCode());
    }

    private String out() {
        return folder.resolve("reports").toString();
    }
}
