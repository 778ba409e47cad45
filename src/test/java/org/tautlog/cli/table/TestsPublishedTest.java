package org.tautlog.cli.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.spc.Published;

/** Tests for strays, changes and differences from the command line, against what handbooks print and R computes. */
class TestsPublishedTest {
    private static final String PUBLISHED = "src/test/resources/published/";

    /** NIST/SEMATECH e-Handbook 1.3.5.17.1: G 2.4687 (cut, not rounded); two-sided critical value from SciPy. */
    @Test
    void grubbs_finds_the_stray_of_the_handbook() throws Exception {
        var tests = tests("outliers", PUBLISHED + "nist_uranium_8.csv", "--value", "x", "--level", "0.05");
        assertEquals(2.468764611, figure(tests.path(0), "G"), 5e-10);
        assertEquals(2.126645087, figure(tests.path(0), "critical value"), 5e-10);
        for (int test = 0; test < 3; test++)
            assertEquals(
                    245.57,
                    tests.path(test).path("marks").path(0).path("value").asDouble(),
                    tests.path(test).toString());
    }

    /** NIST/SEMATECH e-Handbook 1.3.5.17.3 and Rosner (1983): all ten R and lambda, three strays. */
    @Test
    void generalized_esd_takes_rosners_ten_steps() throws Exception {
        var esd = tests("outliers", PUBLISHED + "rosner_1983_54.csv", "--value", "x", "--level", "0.05")
                .path(1);
        var printed = Published.rows("rosner_esd");
        for (int i = 0; i < 10; i++) {
            assertEquals(Double.parseDouble(printed.get(i).get("statistic")), figure(esd, "R" + (i + 1)), 5.01e-7);
            assertEquals(Double.parseDouble(printed.get(i).get("critical")), figure(esd, "lambda" + (i + 1)), 5.01e-7);
        }
        assertEquals(3, esd.path("marks").size());
        assertEquals(6.01, esd.path("marks").path(0).path("value").asDouble());
    }

    /** Flow of the Nile, 1871 to 1970: break after 1898 (Zeileis and others); Mann-Kendall, Sen and Pettitt computed in R. */
    @Test
    void the_nile_changed_when_the_literature_says() throws Exception {
        var tests = tests("changes", PUBLISHED + "nile.csv", "--value", "flow");
        var level = tests.path(1);
        assertEquals(1, level.path("marks").size());
        assertEquals(1097.75, figure(level, "before"), 5e-9);
        assertEquals(849.972222, figure(level, "after"), 5e-7);
        var trend = tests.path(3);
        assertEquals(-1387, figure(trend, "score S"));
        assertEquals(-4.12806652284, figure(trend, "z"), 5e-9);
        assertEquals(3.65826e-05, figure(trend, "p value"), 5e-11);
        assertEquals(-0.280741335, figure(trend, "tau"), 5e-10);
        assertEquals(-2.6, figure(trend, "Sen slope for each row"), 1e-9);
        assertEquals(-3.62790697674, figure(trend, "slope, lower bound"), 5e-9);
        assertEquals(-1.42857, figure(trend, "slope, upper bound"), 5e-6);
        var ranks = tests.path(4);
        assertEquals(1617, figure(ranks, "K"));
        assertEquals(3.5910222e-07, figure(ranks, "p value"), 5e-14);
        assertEquals(
                level.path("marks").path(0).path("place"),
                ranks.path("marks").path(0).path("place"));
    }

    /** NIST/SEMATECH e-Handbook 1.3.5.4 and 1.3.5.10, gears: 2.2969, 1.705910; Kruskal-Wallis 17.031 from SciPy. */
    @Test
    void gears_are_compared_as_in_the_handbook() throws Exception {
        var tests = tests("groups", PUBLISHED + "nist_gear.csv", "--value", "diameter", "--by", "batch");
        assertEquals(1.705910, figure(tests.path(0), "statistic"), 1e-5);
        assertEquals(2.2969, figure(tests.path(1), "statistic"), 5e-5);
        assertEquals(17.031239, figure(tests.path(3), "statistic"), 5e-7);
        assertEquals(0.04822902, figure(tests.path(3), "p value"), 5e-9);
        assertEquals(45, (int) figure(tests.path(4), "pairs compared"));
    }

    @Test
    void changes_names_its_tests_and_what_sets_exit_code_1() {
        var help = CommandLineRun.of("changes", "--help").out().replaceAll("\\s+", " ");
        assertTrue(help.contains("Mann-Kendall") && help.contains("Pettitt 1979") && help.contains("Holm"), help);
        assertTrue(help.contains("1 computed, and one of the four tests found a change"), help);
    }

    @Test
    void a_test_that_cannot_be_made_says_why_and_the_others_go_on() throws Exception {
        var file = PUBLISHED + "nist_6_3_2_2_flowrate.csv";
        var run = CommandLineRun.of("changes", file, "--value", "x");
        assertTrue(run.out().contains("resemblance of neighbours: no test: "), run.out());
        assertTrue(run.out().contains("trend (Mann-Kendall): "), run.out());
        assertEquals(2, CommandLineRun.of("groups", file, "--value", "x").exitCode());
        assertEquals(
                2,
                CommandLineRun.of("outliers", file, "--value", "x", "--level", "2")
                        .exitCode());
    }

    private static JsonNode tests(String... words) throws Exception {
        return CommandLineRun.json(words).path("groups").path(0).path("tests");
    }

    private static double figure(JsonNode test, String name) {
        assertTrue(test.path("figures").has(name), name + " in " + test);
        return test.path("figures").path(name).asDouble();
    }
}
