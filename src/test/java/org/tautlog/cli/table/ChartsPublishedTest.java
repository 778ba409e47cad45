package org.tautlog.cli.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.spc.Published;

/** Charts of the command line, point by point, against what handbooks print. Each file of {@code published} names its source. */
class ChartsPublishedTest {
    private static final String PUBLISHED = "src/test/resources/published/";
    private static final String RYAN = PUBLISHED + "ryan_t9_2_hotelling_20x4x2.csv";

    /** Ryan (2000), table 9.2, at 1 - 0.9973^2: limits 11.04 and 12.20, samples 10 and 20 out; digits from R. */
    @Test
    void t_squared_of_subgroups_is_that_of_the_textbook_in_both_phases(@TempDir Path folder) throws Exception {
        var limits = folder.resolve("t2.json").toString();
        var one = group(
                "chart",
                RYAN,
                "--kind",
                "t2",
                "--value",
                "x1",
                "--value",
                "x2",
                "--subgroup",
                "sample",
                "--false-alarm",
                "0.00539271",
                "--keep-all",
                "--freeze",
                limits);
        assertEquals(11.03975666, figure(one, "upper limit"), 5e-9);
        assertEquals(12.20183631, figure(one, "upper limit for new points"), 5e-9);
        assertEquals(List.of(10, 20), signals(one));
        assertEquals(2.241604894, point(one, 0, 0), 5e-10);
        assertEquals(63.76042138, point(one, 0, 9), 5e-9);
        assertEquals(13.03761715, point(one, 0, 19), 5e-9);
        var two = group("chart", RYAN, "--value", "x1", "--value", "x2", "--subgroup", "sample", "--limits", limits);
        assertEquals("frozen limits", two.path("basis").asText());
        assertEquals(12.20183631, figure(two, "upper limit"), 5e-9);
        assertEquals(List.of(10, 20), signals(two));
        assertEquals(63.76042138, point(two, 0, 9), 5e-9);
    }

    /** Montgomery, tables 6.1 and 6.2: limits 1.318 and 1.693 from 25 samples; of the next 20, means 43 and 45 lie above. */
    @Test
    void flow_width_goes_out_of_frozen_limits_where_the_textbook_says(@TempDir Path folder) throws Exception {
        var limits = folder.resolve("flow.json").toString();
        var phaseOne = group(wide("montgomery_t6_1_flow_width", "--kind", "mean-range", "--freeze", limits));
        assertEquals(1.69325, figure(phaseOne, "upper limit"), 1e-4, "the book rounds A2 to 0.577");
        assertEquals(1.31795, figure(phaseOne, "lower limit"), 1e-4);
        assertEquals(0.68749, figure(phaseOne, "upper limit of ranges"), 2e-4, "and D4 to 2.114");
        assertEquals(List.of(), signals(phaseOne));
        var phaseTwo = group(wide("montgomery_t6_2_flow_width_phase2", "--limits", limits));
        assertEquals(List.of(43 - 25, 45 - 25), signals(phaseTwo));
        assertEquals(1.6970, point(phaseTwo, 0, 17), 5e-5);
        assertEquals(1.7700, point(phaseTwo, 0, 19), 5e-5);
    }

    /** The same samples by standard deviations: limits 1.3178 and 1.6934, 0.2748; digits from R. */
    @Test
    void flow_width_by_standard_deviations_has_the_limits_of_r() throws Exception {
        var group = group(wide("montgomery_t6_1_flow_width", "--kind", "mean-deviation"));
        assertEquals(1.693378238, figure(group, "upper limit"), 5e-10);
        assertEquals(1.317842562, figure(group, "lower limit"), 5e-10);
        assertEquals(0.1315546352, figure(group, "centre of deviations"), 5e-11);
        assertEquals(0.2748173525, figure(group, "upper limit of deviations"), 5e-11);
    }

    /** NIST/SEMATECH e-Handbook 6.3.2.3: both sums of all twenty values as printed; signals from the fourteenth on. */
    @Test
    void cumulative_sums_are_those_of_the_handbook() throws Exception {
        var group = group(
                "chart",
                PUBLISHED + "nist_6_3_2_3_cusum.csv",
                "--kind",
                "cusum",
                "--value",
                "x",
                "--centre",
                "325",
                "--deviation",
                "0.635",
                "--slack",
                "0.5",
                "--decision",
                "6.6077");
        var printed = Published.rows("nist_6_3_2_3_cusum");
        for (int i = 0; i < printed.size(); i++) {
            assertEquals(
                    Double.parseDouble(printed.get(i).get("shi_printed")), line(group, 0, i), 0.0051, "sum up " + i);
            assertEquals(
                    -Double.parseDouble(printed.get(i).get("slo_printed")), line(group, 1, i), 0.0051, "down " + i);
        }
        assertEquals(List.of(14, 15, 16, 17, 18, 19, 20), signals(group));
        assertEquals(
                0.635,
                group.path("figures").path("standard deviation behind k and h").asDouble(),
                1e-12);
    }

    /** Definition of the head start, Lucas and Crosier (1982): both sums begin at h / 2. */
    @Test
    void a_head_start_begins_both_sums_at_half_the_decision_value() throws Exception {
        var group = group(
                "chart",
                PUBLISHED + "nist_6_3_2_3_cusum.csv",
                "--kind",
                "cusum",
                "--value",
                "x",
                "--centre",
                "325",
                "--deviation",
                "1",
                "--head-start");
        assertEquals(2.5 + (324.925 - 325) - 0.5, line(group, 0, 0), 1e-9);
        assertEquals(-(2.5 - (324.925 - 325) - 0.5), line(group, 1, 0), 1e-9);
    }

    /** NIST/SEMATECH e-Handbook 6.3.2.4: all twenty averages as printed, none beyond. */
    @Test
    void moving_averages_are_those_of_the_handbook() throws Exception {
        var group = group(
                "chart",
                PUBLISHED + "nist_6_3_2_4_ewma.csv",
                "--kind",
                "ewma",
                "--value",
                "x",
                "--centre",
                "50",
                "--deviation",
                "2.0539",
                "--weight",
                "0.3",
                "--width",
                "3");
        var printed = Published.rows("nist_6_3_2_4_ewma");
        for (int i = 0; i < printed.size(); i++)
            assertEquals(Double.parseDouble(printed.get(i).get("ewma_printed")), point(group, 0, i), 0.0051, "z " + i);
        assertEquals(List.of(), signals(group));
    }

    /** NIST/SEMATECH e-Handbook 6.3.3.2 in numbers out of 50: 11.57, 20.51, 2.62; digits from R. */
    @Test
    void wafer_numbers_have_the_limits_of_the_handbook() throws Exception {
        var group = group(wafers("np", "--keep-all"));
        assertEquals(11.56666667, figure(group, "centre"), 5e-9);
        assertEquals(20.51195593, figure(group, "upper limit"), 5e-9);
        assertEquals(2.621377404, figure(group, "lower limit"), 5e-10);
        assertEquals(List.of(15, 23), signals(group));
    }

    /** Formula of Laney, Quality Engineering 14 (2002), on the same wafers, computed in Python: scatter 1.66031, limit 0.52837. */
    @Test
    void wafer_fractions_with_their_scatter_have_the_limits_of_laneys_formula() throws Exception {
        var group = group(wafers("p-laney", "--keep-all"));
        assertEquals(0.23133333333, figure(group, "centre"), 5e-11);
        assertEquals(1.6603086218, figure(group, "scatter between points over chance"), 5e-10);
        assertEquals(0.5283721511, figure(group, "upper limit"), 5e-11);
        assertEquals(0, figure(group, "lower limit"));
        assertEquals(List.of(), signals(group));
    }

    /** NIST/SEMATECH e-Handbook 6.3.3.1, as faults for each wafer: 16, 4, 28, wafer 24 beyond. */
    @Test
    void wafer_faults_for_each_unit_have_the_limits_of_the_handbook(@TempDir Path folder) throws Exception {
        var text = new StringBuilder("c,wafers\n");
        for (double c : Published.column("nist_6_3_3_1_wafer_c", "c"))
            text.append(c).append(",1\n");
        var file = folder.resolve("u.csv");
        java.nio.file.Files.writeString(file, text);
        var group = group("chart", file.toString(), "--kind", "u", "--value", "c", "--amount", "wafers", "--keep-all");
        assertEquals(16, figure(group, "centre"), 1e-9);
        assertEquals(28, figure(group, "upper limit"), 1e-9);
        assertEquals(4, figure(group, "lower limit"), 1e-9);
        assertEquals(List.of(24), signals(group));
    }

    private static String[] wafers(String kind, String more) {
        return new String[] {
            "chart", PUBLISHED + "nist_6_3_3_2_wafer_p_n50.csv", "--kind", kind, "--value", "d", "--amount", "n", more
        };
    }

    private static String[] wide(String set, String... more) {
        var words = new java.util.ArrayList<>(List.of("chart", PUBLISHED + set + ".csv"));
        for (int i = 1; i <= 5; i++) words.addAll(List.of("--value", "x" + i));
        words.addAll(List.of(more));
        return words.toArray(String[]::new);
    }

    private static JsonNode group(String... words) throws Exception {
        return CommandLineRun.json(words).path("groups").path(0);
    }

    private static double figure(JsonNode group, String name) {
        assertEquals(true, group.path("figures").has(name), name + " in " + group.path("figures"));
        return group.path("figures").path(name).asDouble();
    }

    private static double point(JsonNode group, int panel, int index) {
        return group.at("/panels/" + panel + "/lines/0/points/" + index + "/value")
                .asDouble();
    }

    private static double line(JsonNode group, int line, int index) {
        return group.at("/panels/0/lines/" + line + "/points/" + index + "/value")
                .asDouble();
    }

    private static List<Integer> signals(JsonNode group) {
        return StreamSupport.stream(group.path("signals").spliterator(), false)
                .map(signal -> signal.path("point").asInt())
                .toList();
    }
}
