package org.tautlog.cli.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.spc.Published;

/** Capability and gauge studies of the command line against what handbooks and manuals print. */
class StudiesPublishedTest {
    private static final String PUBLISHED = "src/test/resources/published/";

    @TempDir
    Path folder;

    /**
     * NIST/SEMATECH e-Handbook 6.1.6: limits 8 and 20, mean 16, deviation 2 give 1.0 and 0.6667. The handbook prints no values;
     * these 50 are normal scores of just that mean and deviation. Bounds: formulas of the same page, computed with SciPy.
     */
    @Test
    void the_handbooks_process_has_its_indices() throws Exception {
        var file = folder.resolve("normal.csv");
        Files.writeString(file, normalScores(50, 16, 2));
        var words = new String[] {"capability", file.toString(), "--value", "x", "--low", "8", "--high", "20"};
        var group = CommandLineRun.json(words).path("groups").path(0);
        assertEquals("normal", group.path("shape").asText());
        assertEquals(1.0, group.path("pp").path("value").asDouble(), 1e-9);
        assertEquals(0.802482, group.path("pp").path("lower").asDouble(), 5e-7);
        assertEquals(1.197126, group.path("pp").path("upper").asDouble(), 5e-7);
        assertEquals(0.6667, group.path("ppk").path("value").asDouble(), 5e-5);
        assertEquals(0.505551, group.path("ppk").path("lower").asDouble(), 5e-7);
        assertEquals(0.827782, group.path("ppk").path("upper").asDouble(), 5e-7);
        var text = CommandLineRun.of(words).out();
        assertTrue(text.contains("Ppk  0.666667  (0.505551 to 0.827782 with 95 %)"), text);
    }

    /** The same process with one limit only: 0.6667 against the upper, 1.3333 against the lower, no Pp. */
    @Test
    void a_process_with_one_limit_has_that_sides_index_only() throws Exception {
        var file = folder.resolve("normal.csv");
        Files.writeString(file, normalScores(50, 16, 2));
        var upper = CommandLineRun.json("capability", file.toString(), "--value", "x", "--high", "20")
                .path("groups")
                .path(0);
        assertEquals(0.6667, upper.path("ppk").path("value").asDouble(), 5e-5);
        assertTrue(upper.path("pp").has("whyMissing"), upper.toString());
        var lower = CommandLineRun.json("capability", file.toString(), "--value", "x", "--low", "8", "--machine")
                .path("groups")
                .path(0);
        assertEquals(1.3333, lower.path("cmk").path("value").asDouble(), 5e-5);
        assertTrue(lower.path("cm").has("whyMissing"), lower.toString());
    }

    /** Montgomery, table 6.1, 1.0 to 2.0: he gives Cp 1.192 by mean range / d2; by pooled and overall deviation from R. */
    @Test
    void flow_width_is_as_capable_as_the_textbook_says() throws Exception {
        var text = new StringBuilder("sample,x\n");
        for (var row : Published.rows("montgomery_t6_1_flow_width"))
            for (int i = 1; i <= 5; i++)
                text.append(row.get("sample"))
                        .append(',')
                        .append(row.get("x" + i))
                        .append('\n');
        var file = folder.resolve("flow.csv");
        Files.writeString(file, text);
        var group = CommandLineRun.json(
                        "capability",
                        file.toString(),
                        "--value",
                        "x",
                        "--low",
                        "1",
                        "--high",
                        "2",
                        "--subgroup",
                        "sample")
                .path("groups")
                .path(0);
        assertEquals(1.192, group.path("cp").path("value").asDouble(), 0.004);
        assertEquals(1 / (6 * 0.1394250184), group.path("cp").path("value").asDouble(), 5e-9);
        assertEquals(1 / (6 * 0.1332335367), group.path("pp").path("value").asDouble(), 5e-9);
        assertEquals("in-control", group.path("stability").path("word").asText());
    }

    /** AIAG, Measurement Systems Analysis, 4th edition, table A 2 to 4: .199933 .226838 .302373 1.042327, 27.86 %, 4; 22.68 % of 8. */
    @Test
    void a_gauge_study_by_variance_gives_the_figures_of_the_manual() throws Exception {
        var anova = manual().path("anova");
        assertEquals(0.199933, anova.path("repeatability").asDouble(), 1e-6);
        assertEquals(0.226838, anova.path("reproducibility").asDouble(), 1e-6);
        assertEquals(0.302373, anova.path("gauge").asDouble(), 2e-6);
        assertEquals(1.042327, anova.path("part").asDouble(), 1e-6);
        assertEquals(0.2786, anova.path("shareOfTotal").asDouble(), 5e-5);
        assertEquals(0.2268, anova.path("shareOfTolerance").asDouble(), 5e-5);
        assertEquals(0.9741064, anova.path("interactionPValue").asDouble(), 5e-8);
        assertTrue(anova.path("interactionPooled").asBoolean());
        assertEquals(4, anova.path("categories").asInt());
    }

    /** The same manual by averages and ranges: .20188 .22963 .30575 1.10456, 26.68 %, 5 categories. */
    @Test
    void a_gauge_study_by_ranges_gives_the_figures_of_the_manual() throws Exception {
        var ranges = manual().path("average-range");
        assertEquals(0.20188, ranges.path("repeatability").asDouble(), 5e-5);
        assertEquals(0.22963, ranges.path("reproducibility").asDouble(), 1e-4);
        assertEquals(0.30575, ranges.path("gauge").asDouble(), 5e-5);
        assertEquals(1.10456, ranges.path("part").asDouble(), 1.5e-4);
        assertEquals(0.2668, ranges.path("shareOfTotal").asDouble(), 1e-4);
        assertEquals(5, ranges.path("categories").asInt());
        assertTrue(ranges.path("interactionPValue").isMissingNode(), "ranges cannot see an interaction");
        assertTrue(ranges.path("interactionPooled").isMissingNode(), "ranges cannot see an interaction");
    }

    /** AIAG, Measurement Systems Analysis, 3rd edition, linearity: slope -0.131667, intercept 0.736667, five biases as printed. */
    @Test
    void bias_and_linearity_are_those_of_the_manual() throws Exception {
        var file = PUBLISHED + "aiag_msa_linearity_5x12.csv";
        var study = CommandLineRun.json("gauge", file, "--value", "reading", "--reference", "reference");
        double[] printed = {0.491667, 0.125, 0.025, -0.29167, -0.61667};
        for (int i = 0; i < printed.length; i++)
            assertEquals(
                    printed[i],
                    study.path("biases").path(i).path("bias").path("value").asDouble(),
                    5e-6);
        assertEquals(-0.131667, study.path("linearity").path("slope").asDouble(), 5e-7);
        assertEquals(0.736667, study.path("linearity").path("intercept").asDouble(), 5e-7);
        assertTrue(study.path("linearity").path("slopeBounds").path("upper").asDouble() < 0, "not linear, as he says");
        var words = CommandLineRun.of("gauge", file, "--value", "reading", "--reference", "reference")
                .out();
        assertTrue(words.contains("12 readings of this reference; a bias of 0 lies outside the bounds"), words);
        assertTrue(words.contains("60 readings of all references"), words);
    }

    private static JsonNode manual() throws Exception {
        return CommandLineRun.json(
                        "gauge",
                        PUBLISHED + "aiag_msa4_grr_10x3x3.csv",
                        "--value",
                        "value",
                        "--part",
                        "part",
                        "--appraiser",
                        "appraiser",
                        "--trial",
                        "trial",
                        "--tolerance",
                        "8",
                        "--method",
                        "both")
                .path("methods");
    }

    /** Normal scores in a mixed order, scaled to an exact mean and standard deviation. */
    private static String normalScores(int n, double mean, double sd) {
        var law = NormalDistribution.of(0, 1);
        double squares = 0;
        var scores = new double[n];
        var order = new java.util.ArrayList<>(
                java.util.stream.IntStream.range(0, n).boxed().toList());
        java.util.Collections.shuffle(order, new java.util.Random(1));
        for (int i = 0; i < n; i++) {
            scores[i] = law.inverseCumulativeProbability((order.get(i) + 0.5) / n);
            squares += scores[i] * scores[i];
        }
        double scale = sd / Math.sqrt(squares / (n - 1));
        var text = new StringBuilder("x\n");
        for (double score : scores) text.append(mean + scale * score).append('\n');
        return text.toString();
    }
}
