package org.tautlog.cli.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;

/** One line of the program gives the limits that handbooks print. Each file of {@code published} names its source. */
class TableStudiesPublishedTest {
    private static final String PUBLISHED = "src/test/resources/published/";

    /** NIST/SEMATECH e-Handbook 6.3.2.2: 50.81, 55.8041, 45.8159; it rounds d2 to 1.128, which widens them by 0.0017. */
    @Test
    void flow_rates_have_the_limits_of_the_handbook() throws Exception {
        var file = PUBLISHED + "nist_6_3_2_2_flowrate.csv";
        assertEquals(0, CommandLineRun.of("chart", file, "--value", "x").exitCode());
        var figures = figures("chart", file, "--value", "x");
        assertEquals(50.81, figures.path("centre").asDouble(), 5e-3);
        assertEquals(55.8041, figures.path("upper limit").asDouble(), 1.8e-3);
        assertEquals(45.8159, figures.path("lower limit").asDouble(), 1.8e-3);
    }

    /** Montgomery, 2nd edition, piston rings: 74.001, 74.014, 73.988; ranges 0.023, 0.049 from the rounded 0.023. */
    @Test
    void piston_rings_have_the_limits_of_the_textbook() throws Exception {
        var figures = figures(
                "chart",
                PUBLISHED + "montgomery_pistonrings_phase1_25x5.csv",
                "--kind",
                "mean-range",
                "--value",
                "x1",
                "--value",
                "x2",
                "--value",
                "x3",
                "--value",
                "x4",
                "--value",
                "x5");
        assertEquals(74.001, figures.path("centre").asDouble(), 0.0005);
        assertEquals(74.014, figures.path("upper limit").asDouble(), 0.0007);
        assertEquals(73.988, figures.path("lower limit").asDouble(), 0.0007);
        assertEquals(0.023, figures.path("centre of ranges").asDouble(), 0.0005);
        assertEquals(0.049, figures.path("upper limit of ranges").asDouble(), 0.001);
    }

    /** NIST/SEMATECH e-Handbook 6.3.2.4: centre 50, s 2.0539, lambda 0.3: limits 52.5884 and 47.4115, last average 51.99 (steady). */
    @Test
    void moving_averages_near_the_limits_of_the_handbook() throws Exception {
        var figures = figures(
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
        assertEquals(52.5884, figures.path("upper limit").asDouble(), 0.001);
        assertEquals(47.4115, figures.path("lower limit").asDouble(), 0.001);
    }

    /** NIST/SEMATECH e-Handbook 6.3.2.3: target 325, k 0.3175, h 4.1959; the sum of decreases first exceeds h at point 14. */
    @Test
    void sums_signal_where_the_handbook_does() throws Exception {
        var run = CommandLineRun.of(
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
                "6.6077",
                "--json");
        var group = json(run).path("groups").path(0);
        assertEquals(0.3175, group.path("figures").path("slack k").asDouble(), 5e-5);
        assertEquals(4.1959, group.path("figures").path("decision value h").asDouble(), 5e-4);
    }

    /** NIST/SEMATECH e-Handbook 6.3.3.1: centre 16, limits 4 and 28. */
    @Test
    void wafer_faults_have_the_limits_of_the_handbook() throws Exception {
        var figures =
                figures("chart", PUBLISHED + "nist_6_3_3_1_wafer_c.csv", "--kind", "c", "--value", "c", "--keep-all");
        assertEquals(16, figures.path("centre").asDouble(), 0.5);
        assertEquals(28, figures.path("upper limit").asDouble(), 0.5);
        assertEquals(4, figures.path("lower limit").asDouble(), 0.5);
    }

    /** NIST/SEMATECH e-Handbook 6.3.3.2: mean 0.2313, limits 0.4102 and 0.0524; points 15 and 23 beyond. */
    @Test
    void wafer_fractions_have_the_limits_of_the_handbook() throws Exception {
        var run = CommandLineRun.of(
                "chart",
                PUBLISHED + "nist_6_3_3_2_wafer_p_n50.csv",
                "--kind",
                "p",
                "--value",
                "d",
                "--amount",
                "n",
                "--keep-all",
                "--json");
        assertEquals(1, run.exitCode());
        var group = json(run).path("groups").path(0);
        assertEquals(0.2313, group.path("figures").path("centre").asDouble(), 5e-5);
        assertEquals(0.4102, group.path("figures").path("upper limit").asDouble(), 5e-5);
        assertEquals(0.0524, group.path("figures").path("lower limit").asDouble(), 5e-5);
        assertEquals(15, group.path("signals").path(0).path("point").asInt());
        assertEquals(23, group.path("signals").path(1).path("point").asInt());
    }

    /** Phase 2: what one run keeps, the next one uses; the handbook's own values lie within its limits. */
    @Test
    void frozen_limits_come_back_the_same(@TempDir Path folder) throws Exception {
        var limits = folder.resolve("limits.json").toString();
        var file = PUBLISHED + "nist_6_3_2_2_flowrate.csv";
        var first = CommandLineRun.of("chart", file, "--value", "x", "--freeze", limits);
        assertEquals(0, first.exitCode(), first.err());
        var again = figures("chart", file, "--value", "x", "--limits", limits);
        assertEquals(55.8041, again.path("upper limit").asDouble(), 1.8e-3);
        assertTrue(Files.readString(Path.of(limits)).contains("\"individuals\""));
    }

    private static JsonNode figures(String... words) throws Exception {
        return CommandLineRun.json(words).path("groups").path(0).path("figures");
    }

    private static JsonNode json(CommandLineRun run) throws Exception {
        assertTrue(run.out().startsWith("{"), run.out() + run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
