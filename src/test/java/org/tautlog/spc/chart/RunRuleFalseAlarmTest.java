package org.tautlog.spc.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tautlog.spc.Simulated;

/**
 * How long each rule alone runs until its first signal on independent normal values: 1500 seeded runs, the mean held to 3.3
 * of its standard errors, 99.9 %. Theory is computed here by {@link RuleTheory}, which shares nothing with the rules' own code.
 */
class RunRuleFalseAlarmTest {
    private static final int RUNS = 1500;

    @ParameterizedTest
    @EnumSource(RunRule.class)
    void each_rule_alone_runs_as_long_as_theory_says(RunRule rule) {
        double theory = RuleTheory.averageRunLength(rule);
        held(EnumSet.of(rule), theory, RUNS, 3100L);
    }

    /** Source: Champ and Woodall, Technometrics 29 (1987), table 1, no shift; from memory. */
    @ParameterizedTest
    @CsvSource({
        "TWO_OF_THREE, , , 225.44",
        "FOUR_OF_FIVE, , , 166.05",
        "EIGHT_ONE_SIDE, , , 152.73",
        "TWO_OF_THREE, FOUR_OF_FIVE, , 132.89",
        "TWO_OF_THREE, EIGHT_ONE_SIDE, , 122.05",
        "FOUR_OF_FIVE, EIGHT_ONE_SIDE, , 105.78",
        "TWO_OF_THREE, FOUR_OF_FIVE, EIGHT_ONE_SIDE, 91.75",
    })
    void limits_with_rules_of_western_electric_run_as_long_as_published(
            RunRule one, RunRule two, RunRule three, double published) {
        var rules = EnumSet.of(RunRule.BEYOND_LIMITS, one);
        if (two != null) rules.add(two);
        if (three != null) rules.add(three);
        held(rules, published, 10_000, 3200L);
    }

    @Test
    void theory_meets_what_has_a_closed_form() {
        assertEquals(370.398, RuleTheory.averageRunLength(RunRule.BEYOND_LIMITS), 5e-4);
        assertEquals(255, RuleTheory.averageRunLength(RunRule.EIGHT_ONE_SIDE), 1e-6);
        assertEquals(511, RuleTheory.averageRunLength(RunRule.NINE_ONE_SIDE), 1e-6);
    }

    private static void held(Set<RunRule> rules, double theory, int runs, long seed) {
        var sampler = Simulated.normal(seed);
        double sum = 0;
        double squares = 0;
        for (int run = 0; run < runs; run++) {
            var watch = new RunRuleWatch(rules);
            int length = 1;
            while (watch.next(sampler.sample()).isEmpty()) length++;
            sum += length;
            squares += (double) length * length;
        }
        double mean = sum / runs;
        double error = Math.sqrt((squares / runs - mean * mean) / runs);
        assertEquals(theory, mean, 3.3 * error, rules + ", theory " + theory + ", " + runs + " runs");
    }
}
