package org.tautlog.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.report.Schema;
import org.tautlog.review.evidence.Contained;
import org.tautlog.review.evidence.Soundness;

/** What the program writes as JSON, held against its schemas by a validator of another make. */
class SchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    @Test
    void every_line_of_judge_is_a_judgement() throws IOException {
        var lines = CommandLineRun.of(
                        "judge", MadeLogs.mixed(folder.resolve("logs")).toString(), "--json")
                .out()
                .lines()
                .toList();
        assertEquals(3, lines.size());
        for (var line : lines) {
            fits(Schema.JUDGEMENT, line);
        }
    }

    @Test
    void a_shift_fits_alone_and_against_the_one_before() throws IOException {
        var line = folder.resolve("line").toString();
        CommandLineRun.of("simulate", "--engines", "24", "--out", line);
        for (var more : List.of(List.<String>of(), List.of("--previous", line))) {
            var words = new ArrayList<>(List.of("shift", line, "--no-pdf", "--out", out()));
            words.addAll(more);
            CommandLineRun.of(words.toArray(String[]::new));
            fits(Schema.SHIFT, Files.readString(folder.resolve("reports/shift.json")));
        }
    }

    @Test
    void a_tuning_fits_with_enough_traces_and_with_too_few() throws IOException {
        for (int engines : List.of(1, 3)) {
            var trial = folder.resolve("trial" + engines).toString();
            CommandLineRun.of("simulate", "--trial", "--engines", Integer.toString(engines), "--out", trial);
            fits(
                    Schema.TUNING,
                    CommandLineRun.of("tune", trial, "--outcomes", trial + "/outcomes.csv", "--json")
                            .out());
        }
    }

    @Test
    void a_dossier_fits_with_decisions_and_hostile_serials() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.write(folder.resolve("logs"), ArchivedShift.hostile()));
        for (var serial : ArchivedShift.HOSTILE.subList(2, 5)) {
            fits(Schema.ARCHIVE, decide(archive, serial));
            fits(
                    Schema.ENGINE,
                    CommandLineRun.of("engine", serial, "--archive", archive, "--json")
                            .out());
        }
        var simulated = ArchivedShift.simulated(folder.resolve("line"));
        fits(
                Schema.ENGINE,
                CommandLineRun.of("engine", "FW-000003", "--archive", simulated, "--json")
                        .out());
    }

    @Test
    void containments_and_what_happens_to_an_archive_fit() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        decide(archive, "FW-000002");
        for (var suspect : List.of(List.of("--finding", "turn-short"), List.of("--lot", "A17"))) {
            fits(
                    Schema.CONTAINMENT,
                    CommandLineRun.of("contain", suspect.get(0), suspect.get(1), "--archive", archive, "--json")
                            .out());
        }
        fits(
                Schema.ARCHIVE,
                CommandLineRun.of("verify", "--archive", archive, "--json").out());
        fits(
                Schema.ARCHIVE,
                CommandLineRun.of("tidy", "--archive", archive, "--json").out());
        var again = MadeLogs.good(folder.resolve("more")).toString();
        fits(
                Schema.ARCHIVE,
                CommandLineRun.of("import", again, "--archive", archive, "--json")
                        .out());
    }

    @Test
    void a_key_of_the_wrong_kind_missing_or_unheard_of_is_noticed() throws IOException {
        var line = CommandLineRun.of(
                        "judge", MadeLogs.good(folder.resolve("logs")).toString(), "--json")
                .out()
                .lines()
                .findFirst()
                .orElseThrow();
        var judged = (ObjectNode) JSON.readTree(line);
        assertFalse(problems(
                        Schema.JUDGEMENT,
                        judged.deepCopy().put("verdict", "fine").toString())
                .isEmpty());
        assertFalse(
                problems(Schema.JUDGEMENT, judged.deepCopy().put("unheardOf", 1).toString())
                        .isEmpty());
        var without = judged.deepCopy();
        without.remove("findings");
        assertFalse(problems(Schema.JUDGEMENT, without.toString()).isEmpty());
    }

    @Test
    void a_judgement_within_a_dossier_or_a_containment_is_looked_into() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.mixed(folder.resolve("logs")));
        var dossier = CommandLineRun.of("engine", "FW-000002", "--archive", archive, "--json")
                .out();
        var contained = CommandLineRun.of("contain", "--lot", "A17", "--archive", archive, "--json")
                .out();
        for (var report :
                Map.of(Schema.ENGINE, dossier, Schema.CONTAINMENT, contained).entrySet()) {
            var wrong = report.getValue().replace("\"findings\":", "\"found\":");
            assertFalse(
                    problems(report.getKey(), wrong).isEmpty(), report.getKey().word());
        }
    }

    @Test
    void words_in_the_schemas_are_those_of_the_program() throws IOException {
        assertEquals(words(Soundness.values()), words(Schema.ENGINE, "/properties/soundness/enum"));
        assertEquals(
                words(Contained.Reason.values()),
                words(
                        Schema.CONTAINMENT,
                        "/properties/brackets/items/properties/contained/items/properties/reason/enum"));
    }

    @Test
    void each_schema_is_printed_and_an_unknown_one_refused_with_the_names() {
        for (var schema : Schema.values()) {
            assertEquals(
                    schema.text(), CommandLineRun.of("schema", schema.word()).out());
        }
        var unknown = CommandLineRun.of("schema", "shifts");
        assertEquals(2, unknown.exitCode());
        assertTrue(unknown.err().contains("judgement, shift, engine, containment, archive"), unknown.err());
    }

    private String decide(String archive, String serial) {
        return CommandLineRun.of(
                        "decide",
                        serial,
                        "quarantine",
                        "--archive",
                        archive,
                        "--by",
                        "=A",
                        "--reason",
                        "\"<b>",
                        "--json")
                .out();
    }

    private String out() {
        return folder.resolve("reports").toString();
    }

    private static void fits(Schema schema, String json) throws IOException {
        assertEquals(List.of(), problems(schema, json), json);
    }

    private static List<String> problems(Schema schema, String json) throws IOException {
        assertFalse(json.isBlank(), "the check saw something");
        return closed(schema).validate(json, InputFormat.JSON).stream()
                .map(Object::toString)
                .sorted()
                .toList();
    }

    /** As published a schema allows keys to come; here each that is written must be described. It stands alone. */
    private static JsonSchema closed(Schema schema) throws IOException {
        var text = JSON.readTree(schema.text());
        close(text);
        return JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(text.toString(), InputFormat.JSON);
    }

    private static void close(JsonNode node) {
        if (node instanceof ObjectNode object && object.get("properties") instanceof ObjectNode) {
            object.put("additionalProperties", false);
        }
        node.forEach(SchemaTest::close);
    }

    private static Set<String> words(Enum<?>[] constants) {
        return Arrays.stream(constants)
                .map(one -> one.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> words(Schema schema, String place) throws IOException {
        return StreamSupport.stream(JSON.readTree(schema.text()).at(place).spliterator(), false)
                .map(JsonNode::textValue)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
