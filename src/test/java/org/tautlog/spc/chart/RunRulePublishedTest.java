package org.tautlog.spc.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tautlog.spc.Published;

class RunRulePublishedTest {
    private static final List<RunRule> BY_NELSON_NUMBER = List.of(
            RunRule.BEYOND_LIMITS,
            RunRule.NINE_ONE_SIDE,
            RunRule.SIX_STEADY,
            RunRule.FOURTEEN_ALTERNATING,
            RunRule.TWO_OF_THREE,
            RunRule.FOUR_OF_FIVE,
            RunRule.FIFTEEN_WITHIN,
            RunRule.EIGHT_BEYOND);

    static List<CSVRecord> series() {
        return Published.rows("nelson_series");
    }

    @ParameterizedTest(name = "series {index}")
    @MethodSource("series")
    void each_series_breaks_its_own_rules_and_no_other(CSVRecord row) {
        var watch = new RunRuleWatch(RunRule.nelson());
        var found = new EnumMap<RunRule, Set<Integer>>(RunRule.class);
        int place = 0;
        for (double z : numbers(row.get("z"))) {
            place++;
            for (var rule : watch.next(z))
                found.computeIfAbsent(rule, r -> new TreeSet<>()).add(place);
        }
        assertEquals(expected(row.get("breaks")), found, "series " + row.get("series"));
    }

    @ParameterizedTest
    @EnumSource(RunRule.class)
    void a_rule_that_is_switched_off_stays_silent(RunRule rule) {
        for (var row : series()) {
            var without = new RunRuleWatch(EnumSet.complementOf(EnumSet.of(rule)));
            var alone = new RunRuleWatch(EnumSet.of(rule));
            var all = new RunRuleWatch(EnumSet.allOf(RunRule.class));
            for (double z : numbers(row.get("z"))) {
                var everything = all.next(z);
                var rest = new HashSet<>(everything);
                rest.remove(rule);
                assertEquals(rest, new HashSet<>(without.next(z)));
                assertEquals(everything.contains(rule), !alone.next(z).isEmpty());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(RunRule.class)
    void some_series_breaks_every_rule(RunRule rule) {
        var watched = series().stream().anyMatch(row -> {
            var watch = new RunRuleWatch(EnumSet.of(rule));
            return Arrays.stream(numbers(row.get("z")))
                    .mapToObj(watch::next)
                    .filter(broken -> !broken.isEmpty())
                    .toList()
                    .contains(Set.of(rule));
        });
        assertTrue(watched, rule.words());
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static Map<RunRule, Set<Integer>> expected(String text) {
        return Arrays.stream(text.split(";", -1))
                .filter(part -> !part.isBlank())
                .map(part -> part.split(":", -1))
                .collect(Collectors.toMap(
                        part -> BY_NELSON_NUMBER.get(Integer.parseInt(part[0]) - 1),
                        part -> Arrays.stream(part[1].split(" ", -1))
                                .map(Integer::valueOf)
                                .collect(Collectors.toCollection(TreeSet::new))));
    }
}
