package org.tautlog.spc.compare;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.spc.Published.assertRelative;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Published;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

class GroupTestsPublishedTest {
    private static final double[][] GEAR = Published.groups("nist_gear", "batch", "diameter");

    /** Source: NIST/SEMATECH e-Handbook 1.3.5.4, F 2.2969; 1.3.5.10, 1.705910 as printed and 1.705917693 exactly; R. */
    @Test
    void gears_have_the_statistics_of_the_handbook() {
        assertEquals(10, GEAR.length);
        var anova = GroupTests.anova(GEAR).orThrow();
        assertEquals(2.2969, anova.statistic(), 5e-5);
        assertEquals(0.022661, anova.pValue(), 5e-7);
        var spread = GroupTests.brownForsythe(GEAR).orThrow();
        assertEquals(1.705910, spread.statistic(), 1e-5);
        assertEquals(1.705917693, spread.statistic(), 5e-10);
        assertEquals(0.09908297555, spread.pValue(), 5e-12);
        assertEquals(90, spread.freedomWithin());
        var ranks = GroupTests.kruskalWallis(GEAR).orThrow();
        assertEquals(17.031239, ranks.statistic(), 5e-7);
        assertEquals(0.04822902, ranks.pValue(), 5e-9);
    }

    /** Source: NIST Statistical Reference Datasets, certified F; AtmWtAg holds 7 constant leading digits. */
    @Test
    void analysis_of_variance_agrees_with_certified_values() {
        var simple =
                GroupTests.anova(Published.groups("strd_sirstv", "group", "y")).orThrow();
        assertRelative(1.18046237440255, simple.statistic(), 1e-10, "SiRstv");
        assertEquals(0.349447493, simple.pValue(), 5e-10);
        var silver =
                GroupTests.anova(Published.groups("strd_atmwtag", "group", "y")).orThrow();
        assertRelative(15.9467335677930, silver.statistic(), 1e-8, "AtmWtAg, 8 of the digits that its input leaves");
        assertEquals(2.326844485e-4, silver.pValue(), 5e-11);
    }

    /**
     * Source: NIST Statistical Reference Datasets, SmLs01 to SmLs09, certified F 21, 201 and 2001; the values follow the sets'
     * own pattern, from memory, which gives the certified sums 1.68 and 1.80. Lower difficulty to 1 to 3, average 4 to 6, higher
     * 7 to 9: there 13 leading digits are constant, and the decimal input itself leaves 3 to 4.
     */
    @ParameterizedTest(name = "NIST StRD SmLs {index}")
    @CsvSource({
        "0, 21, 13", "0, 201, 13", "0, 2001, 13",
        "1000000, 21, 9", "1000000, 201, 9", "1000000, 2001, 9",
        "1000000000000, 21, 3", "1000000000000, 201, 3", "1000000000000, 2001, 3"
    })
    void simulated_sets_keep_their_digits(long base, int n, int digits) {
        var groups = new double[9][n];
        for (int g = 0; g < 9; g++) {
            int tenths = g == 0 ? 4 : g % 2 == 1 ? 3 : 5;
            for (int i = 0; i < n; i++) {
                int tenth = i == 0 ? tenths : i % 2 == 1 ? tenths - 1 : tenths + 1;
                groups[g][i] = Double.parseDouble(Math.max(1, base) + "." + tenth);
            }
        }
        assertRelative(n, GroupTests.anova(groups).orThrow().statistic(), Math.pow(10, -digits), "F");
    }

    /** Identity: for two groups Welch's test is the square of his t. */
    @Test
    void welch_for_two_groups_is_his_t() {
        double[][] two = {Simulated.normal(901, 12), Simulated.normal(902, 30)};
        for (int i = 0; i < two[1].length; i++) two[1][i] = 3 * two[1][i] + 1;
        var test = GroupTests.welch(two).orThrow();
        var pair = GroupTests.pairs(two, Adjustment.NONE, 0.95).orThrow().get(0);
        assertEquals(pair.pValue(), test.pValue(), 1e-12);
        assertTrue(pair.bounds().contains(pair.difference()));
    }

    /** Source: the definitions of Holm (1979) and Benjamini and Hochberg (1995), by hand. */
    @Test
    void adjusted_p_values_follow_their_definitions() {
        double[] p = {0.01, 0.04, 0.03, 0.005};
        assertArrayEquals(new double[] {0.03, 0.06, 0.06, 0.02}, Adjustment.HOLM.adjust(p), 1e-12);
        assertArrayEquals(new double[] {0.02, 0.04, 0.04, 0.02}, Adjustment.BENJAMINI_HOCHBERG.adjust(p), 1e-12);
        assertArrayEquals(p, Adjustment.NONE.adjust(p));
    }

    /** Theory: 5 % of equal groups; Welch with unequal spreads too. */
    @Test
    void equal_groups_are_told_apart_as_often_as_stated() {
        int trials = 2000;
        int[] called = new int[4];
        int anyPair = 0;
        for (int run = 0; run < trials; run++) {
            var groups = new double[4][];
            for (int g = 0; g < 4; g++) groups[g] = Simulated.normal(1_000_000L + 4L * run + g, 15);
            if (GroupTests.anova(groups).orThrow().pValue() < 0.05) called[0]++;
            if (GroupTests.brownForsythe(groups).orThrow().pValue() < 0.05) called[1]++;
            if (GroupTests.kruskalWallis(groups).orThrow().pValue() < 0.05) called[2]++;
            if (GroupTests.pairs(groups, Adjustment.HOLM, 0.95).orThrow().stream()
                    .anyMatch(p -> p.adjusted() < 0.05)) anyPair++;
            for (int i = 0; i < 15; i++) groups[0][i] *= 5;
            if (GroupTests.welch(groups).orThrow().pValue() < 0.05) called[3]++;
        }
        Simulated.assertRate(0.05, called[0], trials, "ANOVA");
        assertEquals(0.045, (double) called[1] / trials, 0.02, "Brown-Forsythe, a little below its level");
        assertEquals(0.048, (double) called[2] / trials, 0.015, "Kruskal-Wallis");
        assertEquals(0.05, (double) called[3] / trials, 0.017, "Welch");
        assertTrue(anyPair <= 0.06 * trials, anyPair + " of " + trials + " studies with a false pair");
    }

    @Test
    void groups_that_cannot_be_compared_get_a_reason() {
        assertEquals(Optional.of(Reason.EMPTY), reason(GroupTests.anova(new double[0][])));
        assertEquals(Optional.of(Reason.TOO_FEW), reason(GroupTests.anova(new double[][] {{1, 2}})));
        assertEquals(Optional.of(Reason.EMPTY), reason(GroupTests.anova(new double[][] {{1, 2}, {}})));
        assertEquals(Optional.of(Reason.TOO_FEW), reason(GroupTests.welch(new double[][] {{1, 2}, {3}})));
        assertEquals(Optional.of(Reason.TOO_FEW), reason(GroupTests.anova(new double[][] {{1}, {3}})));
        assertEquals(Optional.of(Reason.NO_SPREAD), reason(GroupTests.anova(new double[][] {{1, 1}, {3, 3}})));
        assertEquals(Optional.of(Reason.NO_SPREAD), reason(GroupTests.welch(new double[][] {{1, 1}, {3, 4}})));
        assertEquals(Optional.of(Reason.NO_SPREAD), reason(GroupTests.kruskalWallis(new double[][] {{1, 1}, {1, 1}})));
        assertEquals(Optional.of(Reason.NOT_FINITE), reason(GroupTests.anova(new double[][] {{1, Double.NaN}, {1, 1}
        })));
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                GroupTests.pairs(new double[][] {{1, 1}, {3, 3}}, Adjustment.HOLM, 0.95)
                        .missingFor());
    }

    private static Optional<Reason> reason(Answer<GroupTest> test) {
        return test.missingFor();
    }
}
