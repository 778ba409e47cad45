package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.intake.layout.LayoutFile;
import org.tautlog.problem.ProblemCode;
import org.tautlog.trace.Trace;

class JsonLogsTest {
    private static final String LAYOUT = """
            [json]
            traces = "/export/results"
            [identity]
            serial = { column = "/engine/serial" }
            bolt = { column = "/bolt" }
            [samples]
            angle = { column = "/curve/angle", unit = "deg" }
            torque = { column = "/curve/torque", unit = "lbf·ft" }
            """;

    @TempDir
    private Path folder;

    private final List<Trace> traces = new ArrayList<>();

    @Test
    void traces_are_read_where_the_layout_says_that_they_lie() throws IOException {
        var summary = read(
                LAYOUT,
                "{\"by\": {\"results\": [1]}, \"export\": {\"at\": [[]], \"results\": [" + result(1) + ", 5, "
                        + result(2) + "]}}");
        assertEquals(List.of(), summary.problems());
        assertEquals(List.of("01", "02"), serials());
        assertEquals("7", traces.get(0).identity().bolt());
        var curve = traces.get(0).curve();
        assertEquals(0.30000000000000004, curve.angleDeg(2), "the very bits");
        // NIST SP 811, appendix B.8: 1 lbf·ft is 1.355 818 N·m.
        assertEquals(2 * 1.355818, curve.torqueNm(1), 1e-6);
    }

    @Test
    void samples_may_be_objects_and_words_of_stages_have_numbers() throws IOException {
        var layout = """
                [json]
                points = "/points"
                [identity]
                serial = { column = "/serial" }
                [samples]
                angle = { column = "/a", unit = "turn" }
                torque = { column = "/m", unit = "N·m", tightening = "negative" }
                time = { step = 2, unit = "ms" }
                stage = { column = "/s", marks = { Snug = 1, Turn = 2 } }
                """;
        read(
                layout,
                "{\"serial\": 12, \"points\": [{\"a\": 0, \"m\": -1, \"s\": \"Snug\"}, {\"a\": 0.5, \"m\": -2, \"s\": \"Turn\"}]}");
        var curve = traces.get(0).curve();
        assertEquals(180, curve.angleDeg(1));
        assertEquals(2, curve.torqueNm(1));
        assertEquals(0.002, curve.timeS(1));
        assertEquals(2, curve.stage(1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"%s", "%s\n%s", "[%s, %s]"})
    void the_root_may_be_one_trace_many_behind_each_other_or_an_array(String file) throws IOException {
        var layout = LAYOUT.replace("traces = \"/export/results\"", "");
        read(layout, String.format(Locale.ROOT, file, result(1), result(2)));
        assertEquals(file.length() > 3 ? 2 : 1, traces.size());
    }

    @Test
    void of_a_file_that_is_cut_the_traces_before_the_cut_are_used() throws IOException {
        var whole = "{\"export\": {\"results\": [\n" + result(1) + ",\n" + result(2) + "]}}";
        var summary = read(LAYOUT, whole.substring(0, whole.length() - 30));
        assertEquals(List.of("01"), serials());
        assertEquals(List.of(ProblemCode.TRUNCATED), codes(summary));
        assertEquals(3, summary.problems().get(0).where().line());
    }

    @Test
    void what_is_no_json_holds_unequal_arrays_or_no_traces_is_rejected_with_its_reason() throws IOException {
        assertEquals(List.of(ProblemCode.BAD_SYNTAX), codes(read(LAYOUT, "{\"export\": nonsense}")));
        assertEquals(List.of(ProblemCode.UNKNOWN_LAYOUT), codes(read(LAYOUT, "{\"other\": []}")));
        var unequal = result(1).replace("[1, 2, 3.5]", "[1, 2]");
        assertEquals(
                List.of(ProblemCode.BAD_TRACE), codes(read(LAYOUT, "{\"export\": {\"results\": [" + unequal + "]}}")));
        var word = result(1).replace("3.5", "\"x\"");
        assertEquals(
                List.of(ProblemCode.NOT_A_NUMBER), codes(read(LAYOUT, "{\"export\": {\"results\": [" + word + "]}}")));
        assertEquals(List.of(ProblemCode.TOO_LARGE), codes(read(LAYOUT, "[".repeat(100_000))));
        assertEquals(List.of(ProblemCode.MISSING_KEY), codes(read("[json]\n", result(1))));
    }

    @Test
    void a_trace_without_end_does_not_fill_the_memory() throws IOException {
        var endless = "{\"export\": {\"results\": [{\"curve\": {\"angle\": [" + "1,".repeat(200_000) + "1]}}]}}";
        var bounds = new ReadBounds(100, 1 << 16, 1 << 24, 200, 10, 10, 10);
        var summary = read(LAYOUT, endless, ReadOptions.withDefaults().withBounds(bounds));
        assertEquals(List.of(ProblemCode.TOO_LARGE), codes(summary));
    }

    @Test
    void json_beside_logs_is_no_log_where_no_layout_says_so() throws IOException {
        var summary = read("[log]\n", result(1));
        assertEquals(new Tally(2, 0, 0, 2), summary.files());
    }

    /** The field names of OPC 40450-1 and OPC 40001-101 are from memory; the mapping says so too. */
    @Test
    void results_of_the_open_joining_model_are_read_by_a_mapping() throws IOException {
        var layout = Files.readString(Path.of("src/test/resources/layouts/joining-result-from-memory.toml"));
        var step =
                "{\"StepTraceContent\": [{\"PhysicalQuantity\": 3, \"Values\": [%s]}, {\"PhysicalQuantity\": 2, \"Values\": [%s]},"
                        + " {\"PhysicalQuantity\": 1, \"Values\": [%s]}]}";
        var steps = String.format(Locale.ROOT, step, "0, 10", "1, 2", "0, 1") + ", "
                + String.format(Locale.ROOT, step, "20, 30", "5, 9", "2, 3");
        read(
                layout,
                "[{\"ResultMetaData\": {\"ResultId\": \"r1\", \"PartId\": \"000123\", \"CreationTime\": \"2026-03-02T05:12:05Z\","
                        + " \"AssociatedEntities\": [{\"EntityId\": \"S40\"}]}, \"ResultContent\": [{\"Trace\": {\"StepTraces\": ["
                        + steps + "]}}]}]");
        var trace = traces.get(0);
        assertEquals("000123", trace.identity().serial());
        assertEquals("S40", trace.identity().station());
        assertEquals(
                List.of(0.0, 10.0, 20.0, 30.0),
                IntStream.range(0, 4).mapToObj(trace.curve()::angleDeg).toList());
        assertEquals(0.003, trace.curve().timeS(3));
    }

    @Test
    void a_path_that_is_none_is_a_problem_of_the_layout() {
        var outcome = LayoutFile.read("[json]\ntraces = \"results\"\n", "layout.toml");
        assertTrue(outcome.value().isEmpty());
        assertTrue(
                outcome.problems().get(0).sentence().contains("begin with /"),
                outcome.problems().toString());
    }

    private static String result(int number) {
        return String.format(Locale.ROOT, """
                {"bolt": 7, "note": [{}], "engine": {"serial": "0%1$d"}, "curve": \
                {"angle": [0, 0.1, 0.30000000000000004], "torque": [%1$d, 2, 3.5]}}\
                """, number);
    }

    private ReadSummary read(String layout, String json) throws IOException {
        return read(layout, json, ReadOptions.withDefaults());
    }

    private ReadSummary read(String layout, String json, ReadOptions options) throws IOException {
        Files.writeString(folder.resolve("layout.toml"), layout);
        Files.writeString(folder.resolve("a.json"), json);
        traces.clear();
        return LogReader.read(List.of(folder), options, traces::add);
    }

    private List<String> serials() {
        return traces.stream().map(trace -> trace.identity().serial()).toList();
    }

    private static List<ProblemCode> codes(ReadSummary summary) {
        return summary.problems().stream().map(problem -> problem.code()).toList();
    }
}
