package org.tautlog.spc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.spc.Simulated;

/** Eight tests a call, four of each of two series: how often anything at all is called changed. */
class ChangeTestsTest {
    private static final TestOptions AT_5_PERCENT = new TestOptions(0.05, 10, 10);
    private static final int TRIALS = 500;

    /** Theory: at most 5 calls of 100, whatever the shape (Holm 1979). */
    @ParameterizedTest(name = "n = {0}, exp = {1}")
    @CsvSource({"40,false", "100,false", "100,true"})
    void steady_series_are_called_changed_no_oftener_than_stated_over_all_tests_of_a_call(int n, boolean exp) {
        int most = BinomialDistribution.of(TRIALS, 0.05).inverseCumulativeProbability(0.999);
        int changed = changed(n, 0, exp);
        assertTrue(changed <= most, changed + " of " + TRIALS);
    }

    /** Where neighbours resemble each other their resemblance is itself estimated: 7 of 100 calls where 5 are stated. */
    @Test
    void steady_series_whose_neighbours_resemble_each_other_are_hardly_called_changed_oftener() {
        int changed = changed(100, 0.4, false);
        assertTrue(changed <= 0.10 * TRIALS, changed + " of " + TRIALS);
    }

    @Test
    void resemblance_of_neighbours_is_said_and_is_no_change() {
        var alike = ChangeTests.of(Map.of("", rows(resembling(5, 400, 0.5))), AT_5_PERCENT)
                .get("")
                .get(0);
        var said = alike.result().orThrow().said();
        assertTrue(said.startsWith("neighbours resemble each other"), said);
        assertFalse(alike.positive());
    }

    @Test
    void one_series_among_many_that_stepped_is_found_with_every_step() {
        var stepped = Simulated.normal(3, 150);
        for (int i = 50; i < 150; i++) stepped[i] += i < 100 ? 3 : 6;
        var calm = rows(Simulated.normal(4, 150));
        var level = ChangeTests.of(Map.of("calm", calm, "stepped", rows(stepped)), TestOptions.withDefaults())
                .get("stepped")
                .get(1);
        assertEquals(2, level.result().orThrow().marks().size(), level.toString());
    }

    private static int changed(int n, double r, boolean exp) {
        int changed = 0;
        for (int run = 0; run < TRIALS; run++) {
            var groups = Map.of(
                    "one", rows(shaped(resembling(900_000L + 7L * run, n, r), exp)),
                    "other", rows(shaped(resembling(2_900_000L + 7L * run, n, r), exp)));
            if (ChangeTests.of(groups, AT_5_PERCENT).values().stream()
                    .flatMap(List::stream)
                    .anyMatch(TestStudy::positive)) changed++;
        }
        return changed;
    }

    private static double[] shaped(double[] z, boolean exp) {
        return exp ? Arrays.stream(z).map(x -> Math.exp(0.5 * x)).toArray() : z;
    }

    private static double[] resembling(long seed, int n, double r) {
        var z = Simulated.normal(seed, n + 50);
        for (int i = 1; i < z.length; i++) z[i] = r * z[i - 1] + Math.sqrt(1 - r * r) * z[i];
        return Arrays.copyOfRange(z, 50, n + 50);
    }

    private static List<StudyRow> rows(double[] x) {
        return IntStream.range(0, x.length)
                .mapToObj(i -> new StudyRow("line " + (i + 2), List.of(x[i]), "", ""))
                .toList();
    }
}
