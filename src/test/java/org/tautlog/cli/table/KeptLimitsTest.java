package org.tautlog.cli.table;

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
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.archive.Archive;
import org.tautlog.cli.CommandLineRun;

/** Limits belong to the columns that they were made of, and whoever is not held against any is named. */
class KeptLimitsTest {
    private static final String T_SQUARED = "--value torque --value angle --kind t2";

    @TempDir
    Path folder;

    @Test
    void a_file_of_limits_names_columns_groups_subgroups_unit_and_source() throws IOException {
        var table = features("may.csv", 60);
        var kept = json(freeze(table, "--value torque --by spindle --subgroup 5 --unit N·m"));
        assertEquals("mean-range", kept.path("kind").asText());
        assertEquals("[\"torque\"]", kept.path("columns").toString());
        assertEquals("[\"spindle\"]", kept.path("by").toString());
        assertEquals(5, kept.path("subgroupSize").asInt());
        assertEquals("N·m", kept.path("unit").asText());
        assertEquals("may.csv", kept.path("source").path("file").asText());
        assertEquals(
                Archive.sha256(Path.of(table)),
                kept.path("source").path("sha256").asText());
    }

    @Test
    void columns_in_another_order_are_held_against_their_own_limits() throws IOException {
        var table = features("may.csv", 60);
        var limits = freeze(table, T_SQUARED);
        var sameOrder = CommandLineRun.json(words(table, "--value torque --value angle --limits " + limits));
        var otherOrder = CommandLineRun.json(words(table, "--value angle --value torque --limits " + limits));
        assertTrue(sameOrder.path("groups").get(0).path("points").asInt() == 60, sameOrder.toString());
        assertEquals(sameOrder, otherOrder);
        var moved = Files.readString(Path.of(table)).replace("torque,angle,spindle", "angle,torque,spindle");
        var swapped = Files.writeString(folder.resolve("swapped.csv"), moved).toString();
        var run = CommandLineRun.of(words(swapped, "--value torque --value angle --limits " + limits));
        assertTrue(run.out().contains("60 signals"), "columns are found by name, not by place: " + run.out());
    }

    @Test
    void grouping_columns_in_another_order_name_the_same_groups() throws IOException {
        var table = features("may.csv", 60);
        var limits = freeze(table, "--value torque --by station --by spindle");
        var run = CommandLineRun.json(words(table, "--value torque --by spindle --by station --limits " + limits));
        assertEquals("frozen limits", run.path("groups").get(0).path("basis").asText(), run.toString());
        assertEquals(0, run.path("unwatched").size());
    }

    @ParameterizedTest
    @CsvSource({
        "--value torque --value turn, (columns), '--value ''torque'' --value ''angle'''",
        "--value torque, (columns), '--value ''torque'' --value ''angle'''",
        "--value torque --value angle --by spindle, (by), no --by",
        "--value torque --value angle --kind mean-range, (kind), '--kind ''t2'''",
        "--value torque --value angle --unit kN, (unit), '--unit ''N·m'''",
        "--value torque --value angle --subgroup 5, (subgroupSize), no --subgroup",
        "--value torque --value angle --subgroup spindle, (subgroupColumn), no --subgroup"
    })
    void other_columns_than_those_of_the_limits_are_refused(String asked, String key, String expected)
            throws IOException {
        var table = features("may.csv", 60);
        var limits = freeze(table, T_SQUARED + " --unit N·m");
        var run = CommandLineRun.of(words(table, asked + " --limits " + limits));
        assertEquals(2, run.exitCode(), run.out() + run.err());
        assertTrue(run.err().contains(limits + " " + key), run.err());
        assertTrue(run.err().contains("expected " + expected), run.err());
        assertTrue(run.err().contains("keep limits of your own with --freeze FILE"), run.err());
    }

    @Test
    void limits_without_names_of_columns_are_refused() throws IOException {
        var table = features("may.csv", 60);
        var limits = Path.of(freeze(table, "--value torque"));
        var old = (com.fasterxml.jackson.databind.node.ObjectNode) json(limits.toString());
        Files.writeString(limits, old.without(List.of("columns")).toString());
        var run = CommandLineRun.of(words(table, "--value torque --limits " + limits));
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("does not name the columns that its limits belong to"), run.err());
        assertTrue(run.err().contains("(columns)") && run.err().contains("keep limits anew with --freeze"), run.err());
    }

    @ParameterizedTest
    @CsvSource({
        "'\"columns\" : [ \"torque\", \"angle\" ]', '\"columns\" : [ \"torque\" ]', limits are of 2 columns",
        "'\"columns\" : [ \"torque\", \"angle\" ]', '\"columns\" : 7', columns is missing or no list",
        "'\"kind\" : \"t2\"', '\"kind\" : \"pie\"', no chart is called so",
        "'\"group\" : \"\"', '\"other\" : \"\"', group is missing",
        "'\"sha256\" :', '\"sha1\" :', sha256 is missing"
    })
    void a_file_of_limits_that_was_spoilt_is_refused(String before, String after, String said) throws IOException {
        var table = features("may.csv", 60);
        var limits = Path.of(freeze(table, T_SQUARED));
        var text = Files.readString(limits);
        assertTrue(text.contains(before), text);
        Files.writeString(limits, text.replace(before, after));
        var run = CommandLineRun.of(words(table, "--value torque --value angle --limits " + limits));
        assertEquals(2, run.exitCode(), run.out());
        assertTrue(run.err().contains(limits.toString()) && run.err().contains(said), run.err());
    }

    @Test
    void a_stream_that_stands_on_one_side_only_never_looks_like_control() throws IOException {
        var calm = streams("calm.csv", "SP1", "SP2", "SP3");
        var limits = freeze(calm, "--value x --by spindle --kind streams --keep-all");
        assertEquals(
                0,
                CommandLineRun.of(words(calm, "--value x --by spindle --limits " + limits))
                        .exitCode());
        var without = streams("without.csv", "SP1", "SP2");
        unwatched(without, limits, "spindle SP3", "it has limits, and no value here");
        var more = streams("more.csv", "SP1", "SP2", "SP3", "SP9");
        unwatched(more, limits, "spindle SP9", "it has values, and no limits");
    }

    @Test
    void a_group_that_stands_on_one_side_only_never_looks_like_control() throws IOException {
        var calm = streams("calm.csv", "SP1", "SP2", "SP3");
        var limits = freeze(calm, "--value x --by spindle --keep-all");
        assertEquals(
                0,
                CommandLineRun.of(words(calm, "--value x --by spindle --limits " + limits))
                        .exitCode());
        unwatched(streams("without.csv", "SP1", "SP2"), limits, "spindle SP3", "it has limits, and no value here");
        unwatched(
                streams("more.csv", "SP1", "SP2", "SP3", "SP9"), limits, "spindle SP9", "it has values, and no limits");
    }

    private void unwatched(String table, String limits, String name, String reason) throws IOException {
        var words = words(table, "--value x --by spindle --limits " + limits);
        var run = CommandLineRun.of(words);
        assertEquals(1, run.exitCode(), run.out());
        assertTrue(run.out().contains("NOT ALL WATCHED: " + name + " (" + reason + "); exit code 1"), run.out());
        assertFalse(run.out().contains("signal:"), run.out());
        var json = CommandLineRun.json(words);
        assertEquals(1, json.path("exitCode").asInt());
        assertEquals(
                "[{\"name\":\"" + name + "\",\"reason\":\"" + reason + "\"}]",
                json.path("unwatched").toString());
    }

    @Test
    void a_missing_folder_is_named_with_what_to_do() throws IOException {
        var table = features("may.csv", 30);
        for (var option : List.of("--freeze NOPE/x.json", "--out NOPE/x.svg")) {
            var run = CommandLineRun.of(words(table, "--value torque " + option));
            assertEquals(2, run.exitCode(), run.err());
            assertTrue(run.err().contains("the folder of NOPE/x.") && run.err().contains("make "), run.err());
        }
    }

    @Test
    void a_kind_that_nobody_named_is_said_with_its_reason() throws IOException {
        var table = features("may.csv", 30);
        assertTrue(CommandLineRun.of(words(table, "--value torque"))
                .out()
                .startsWith("kind: individuals, as one column is charted without subgroups; --kind names another"));
        assertTrue(CommandLineRun.of(words(table, "--value torque --subgroup 5"))
                .out()
                .startsWith("kind: mean-range, as subgroups are asked for"));
        var several = CommandLineRun.of(words(table, "--value torque --value angle --value turn"));
        assertEquals(2, several.exitCode(), several.out());
        assertTrue(several.err().contains("3 columns can be the values of one subgroup in each row"), several.err());
        assertTrue(several.err().contains("--kind t2"), several.err());
    }

    @Test
    void options_that_the_limits_would_overrule_are_refused() throws IOException {
        var table = features("may.csv", 30);
        var limits = freeze(table, "--value torque");
        for (var option : List.of("--width 2", "--centre 1 --deviation 1", "--keep-all", "--freeze other.json")) {
            var run = CommandLineRun.of(words(table, "--value torque --limits " + limits + " " + option));
            assertEquals(2, run.exitCode(), option + run.out());
        }
    }

    private String freeze(String table, String asked) throws IOException {
        var limits = folder.resolve("limits.json");
        Files.deleteIfExists(limits);
        var run = CommandLineRun.of(words(table, asked + " --freeze " + limits));
        assertTrue(Files.exists(limits), run.out() + run.err());
        return limits.toString();
    }

    private static JsonNode json(String file) throws IOException {
        return new ObjectMapper().readTree(Path.of(file).toFile());
    }

    private static String[] words(String table, String asked) {
        var words = new ArrayList<>(List.of("chart", table));
        words.addAll(List.of(asked.split(" ", -1)));
        return words.toArray(String[]::new);
    }

    private String features(String name, int rows) throws IOException {
        var random = new Random(5);
        var text = new StringBuilder("torque,angle,spindle,station,turn\n");
        for (int i = 0; i < rows; i++) {
            double common = random.nextGaussian();
            text.append(100 + common)
                    .append(',')
                    .append(360 + 2 * common + random.nextGaussian())
                    .append(",SP")
                    .append(1 + i % 2)
                    .append(",S40,")
                    .append(random.nextInt(9))
                    .append('\n');
        }
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private String streams(String name, String... spindles) throws IOException {
        var text = new StringBuilder("spindle,x\n");
        for (var spindle : spindles) {
            var random = new Random(spindle.charAt(2));
            for (int t = 0; t < 30; t++) text.append(spindle + "," + (100 + random.nextDouble()) + "\n");
        }
        return Files.writeString(folder.resolve(name), text).toString();
    }
}
