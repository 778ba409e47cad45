package org.tautlog.cli.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.ArchivedShift;
import org.tautlog.cli.CommandLineRun;

/**
 * Engine 28 of the simulated line lacks a washer under bolt 6 and has something soft under bolt 7: its other six bolts have a
 * clamp load, these two have none, whatever one looks at.
 */
class RefutedEstimateTest {
    private static final String ENGINE = "FW-000028";
    private static final List<String> KEYS =
            List.of("clampLoadKN", "clampLoadLowKN", "clampLoadHighKN", "apparentFriction", "clampLoadAfterWarmUpKN");
    private static final String WHY = "an estimate takes bolt and parts to be those specified";

    @TempDir
    private static Path folder;

    private static String logs = "";

    @BeforeAll
    static void simulate() {
        logs = folder.resolve("line").toString();
        assertEquals(
                0,
                CommandLineRun.of("simulate", "--engines", "28", "--out", logs).exitCode());
    }

    @Test
    void each_judgement_in_json_has_null_and_the_reason() throws IOException {
        int without = 0;
        for (var line : CommandLineRun.of("judge", logs, "--json").out().lines().toList()) {
            var judgement = new ObjectMapper().readTree(line);
            if (!judgement.get("serial").textValue().equals(ENGINE)) {
                continue;
            }
            boolean refuted = judgement.get("findings").toString().contains(WHY);
            without += refuted ? 1 : 0;
            for (var key : KEYS) {
                assertEquals(refuted, judgement.get("signature").get(key).isNull(), key + line);
            }
        }
        assertEquals(2, without);
    }

    @Test
    void the_table_on_the_terminal_has_a_dash() {
        var rows = CommandLineRun.of("judge", logs, "--all")
                .out()
                .lines()
                .filter(line -> line.contains(ENGINE))
                .toList();
        assertEquals(8, rows.size());
        assertEquals(2, rows.stream().filter(row -> row.contains(" - ")).count(), rows.toString());
    }

    @Test
    void the_shift_reports_leave_the_two_bolts_out_of_the_engines_clamp_load() throws IOException {
        var out = folder.resolve("reports");
        CommandLineRun.of("shift", logs, "--out", out.toString());
        var json = new ObjectMapper().readTree(out.resolve("shift.json").toFile());
        var engine = engine(json.get("engineClampLoad"));
        assertEquals(6, engine.get("bolts").intValue());
        assertEquals(2, engine.get("withoutEstimate").intValue());
        assertTrue(engine.get("lowestKN").doubleValue() <= engine.get("meanKN").doubleValue());
        assertTrue(engine.get("spreadKN").doubleValue() > 0);
        var page = Files.readString(out.resolve("shift.html"));
        assertTrue(page.contains("no estimate; a finding says why"), "beside the trace");
        assertTrue(page.contains("that is no word on their clamp load"), "what the column means");
        assertEquals(List.of("6", "7"), boltsWithoutLoad(out.resolve("verdicts.csv")));
    }

    @Test
    void the_dossier_out_of_the_archive_says_why_there_is_none() throws IOException {
        var archive = ArchivedShift.of(folder, Path.of(logs));
        var run = CommandLineRun.of(
                "engine",
                ENGINE,
                "--archive",
                archive,
                "--out",
                folder.resolve("dossier").toString());
        assertTrue(run.out().contains("estimated, for 6 bolt positions; 2 have no estimate"), run.out());
        var page = Files.readString(folder.resolve("dossier/engine-" + ENGINE + ".html"));
        assertEquals(2, page.split("no estimate: [^<]*" + WHY, -1).length - 1);
        var json = new ObjectMapper()
                .readTree(CommandLineRun.of("engine", ENGINE, "--archive", archive, "--json")
                        .out());
        assertEquals(6, json.get("engineClampLoad").get("bolts").intValue());
        assertFalse(json.has("clampLoad"));
    }

    private static JsonNode engine(JsonNode engines) {
        for (var engine : engines) {
            if (engine.get("serial").textValue().equals(ENGINE)) {
                return engine;
            }
        }
        throw new AssertionError("no " + ENGINE + " in " + engines);
    }

    private static List<String> boltsWithoutLoad(Path verdicts) throws IOException {
        var bolts = new ArrayList<String>();
        try (var rows = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(Files.newBufferedReader(verdicts))) {
            for (var row : rows) {
                boolean none = row.get("clampLoadKN").isEmpty();
                assertEquals(none, row.get("clampLoadHighKN").isEmpty(), row.toString());
                if (none && row.get("serial").equals(ENGINE)) {
                    assertTrue(row.get("messages").contains(WHY), row.toString());
                    bolts.add(row.get("bolt"));
                }
            }
        }
        return bolts.stream().sorted().toList();
    }
}
