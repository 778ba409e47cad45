package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Digits;
import org.tautlog.spc.compare.Adjustment;
import org.tautlog.spc.compare.GroupTest;
import org.tautlog.spc.compare.GroupTests;
import org.tautlog.spc.compare.PairComparison;

/** Tells groups of values apart: spreads, means, ranks, and which pairs differ. */
public final class GroupComparison {
    private static final double CONFIDENCE = 0.95;

    private GroupComparison() {}

    /**
     * Compares groups.
     *
     * @param groups rows of one value each by the group's name
     * @param options how it is done
     * @return the tests in reading order
     */
    public static List<TestStudy> of(Map<String, List<StudyRow>> groups, TestOptions options) {
        var names = List.copyOf(groups.keySet());
        var x = groups.values().stream()
                .map(rows ->
                        rows.stream().mapToDouble(row -> row.values().get(0)).toArray())
                .toArray(double[][]::new);
        return List.of(
                test("spreads (Brown-Forsythe)", GroupTests.brownForsythe(x), options),
                test("means, equal spreads (analysis of variance)", GroupTests.anova(x), options),
                test("means, any spreads (Welch)", GroupTests.welch(x), options),
                test("ranks (Kruskal-Wallis)", GroupTests.kruskalWallis(x), options),
                new TestStudy(
                        "pairs of means (Welch, adjusted by Holm)",
                        GroupTests.pairs(x, Adjustment.HOLM, CONFIDENCE).map(pairs -> pairs(names, pairs, options))));
    }

    private static TestStudy test(String name, Answer<GroupTest> answer, TestOptions options) {
        return new TestStudy(name, answer.map(test -> {
            var figures = new ArrayList<SeriesStudy.Figure>();
            figures.add(new SeriesStudy.Figure("statistic", test.statistic()));
            figures.add(new SeriesStudy.Figure("degrees of freedom between", test.freedomBetween()));
            if (test.freedomWithin() > 0)
                figures.add(new SeriesStudy.Figure("degrees of freedom within", test.freedomWithin()));
            figures.add(new SeriesStudy.Figure("p value", test.pValue()));
            boolean differ = test.pValue() <= options.level();
            return new TestStudy.Result(
                    differ, differ ? "the groups differ" : "no difference for certain", figures, List.of());
        }));
    }

    private static TestStudy.Result pairs(List<String> names, List<PairComparison> pairs, TestOptions options) {
        var marks = pairs.stream()
                .filter(pair -> pair.adjusted() <= options.level())
                .map(pair -> new TestStudy.Mark(
                        names.get(pair.other()) + " less " + names.get(pair.one()),
                        pair.difference(),
                        Digits.of(pair.bounds().lower()) + " to "
                                + Digits.of(pair.bounds().upper()) + " with 95 %, adjusted p "
                                + Digits.of(pair.adjusted())))
                .toList();
        return new TestStudy.Result(
                !marks.isEmpty(),
                marks.size() + " of " + pairs.size() + (pairs.size() == 1 ? " pair differs" : " pairs differ"),
                List.of(new SeriesStudy.Figure("pairs compared", pairs.size())),
                marks);
    }
}
