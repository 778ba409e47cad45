package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Digits;
import org.tautlog.spc.change.ChangeOptions;
import org.tautlog.spc.change.ChangePoint;
import org.tautlog.spc.change.Changes;
import org.tautlog.spc.change.Pettitt;
import org.tautlog.spc.change.Trend;
import org.tautlog.spc.compare.Adjustment;

/**
 * Looks for what changed along series: level, spread, trend, and level by ranks, with the resemblance of neighbours that all
 * of them allow for.
 *
 * <p>A test is positive where its p value, adjusted by Holm over all tests of all series, is at or below the level: the
 * chance that anything is called changed in steady series stays below it. Resemblance of neighbours is no change and never
 * positive.
 */
public final class ChangeTests {
    private static final double CONFIDENCE = 0.95;
    private static final int TESTS = 4;

    private ChangeTests() {}

    /** A test before anything is called positive: its p value, and what it says once that is adjusted for the others. */
    private record Open(String test, Answer<Double> pValue, DoubleFunction<TestStudy.Result> said) {}

    /**
     * Tests series.
     *
     * @param groups rows of one value each in time order, by the group's name
     * @param options how it is done; the level holds for all tests together
     * @return the tests of each group in reading order
     */
    public static Map<String, List<TestStudy>> of(Map<String, List<StudyRow>> groups, TestOptions options) {
        double least = options.level() / (TESTS * Math.max(1, groups.size()));
        var alike = new LinkedHashMap<String, TestStudy>();
        var open = new LinkedHashMap<String, List<Open>>();
        groups.forEach((name, rows) -> {
            var x = rows.stream().mapToDouble(row -> row.values().get(0)).toArray();
            var neighbours = Autocorrelation.ofDifferences(x);
            alike.put(name, new TestStudy("resemblance of neighbours", neighbours.map(ChangeTests::alike)));
            var allowed = neighbours.found().orElse(Autocorrelation.none());
            open.put(name, tests(rows, x, allowed, options.level(), least));
        });
        var adjusted = Arrays.stream(Adjustment.HOLM.adjust(open.values().stream()
                        .flatMap(List::stream)
                        .flatMap(test -> test.pValue.found().stream())
                        .mapToDouble(Double::doubleValue)
                        .toArray()))
                .iterator();
        var studies = new LinkedHashMap<String, List<TestStudy>>();
        open.forEach((name, tests) -> {
            var all = new ArrayList<>(List.of(alike.get(name)));
            tests.forEach(test -> all.add(closed(test, adjusted)));
            studies.put(name, List.copyOf(all));
        });
        return studies;
    }

    private static TestStudy closed(Open test, Iterator<Double> adjusted) {
        return new TestStudy(test.test, test.pValue.map(p -> test.said.apply(adjusted.next())));
    }

    private static List<Open> tests(
            List<StudyRow> rows, double[] x, Autocorrelation neighbours, double level, double least) {
        var search = search(level);
        var mean = Changes.ofMean(x, search);
        var spread = Changes.ofSpread(x, search);
        var trend = Trend.of(x, CONFIDENCE, neighbours);
        var ranks = Pettitt.of(x, neighbours);
        return List.of(
                new Open(
                        "level",
                        mean.map(ChangePoint::pValue),
                        p -> changes(
                                rows,
                                mean.orThrow(),
                                p,
                                p <= level
                                        ? Changes.allOfMean(
                                                        x,
                                                        search(Math.max(
                                                                mean.orThrow().pValue(), least)))
                                                .orThrow()
                                        : List.of())),
                new Open(
                        "spread",
                        spread.map(ChangePoint::pValue),
                        p -> changes(rows, spread.orThrow(), p, p <= level ? List.of(spread.orThrow()) : List.of())),
                new Open("trend (Mann-Kendall)", trend.map(Trend::pValue), p -> trend(trend.orThrow(), p, p <= level)),
                new Open(
                        "level by ranks (Pettitt 1979)",
                        ranks.map(Pettitt::pValue),
                        p -> ranks(rows, ranks.orThrow(), p, p <= level)));
    }

    private static ChangeOptions search(double significance) {
        return new ChangeOptions(ChangeOptions.withDefaults().shortestSegment(), CONFIDENCE, significance);
    }

    private static TestStudy.Result alike(Autocorrelation found) {
        return new TestStudy.Result(
                false,
                found.allowed() > 0 ? "neighbours resemble each other; the tests below allow for it" : "none",
                List.of(
                        new SeriesStudy.Figure("lag-1 autocorrelation", found.lagOne()),
                        new SeriesStudy.Figure("bound of chance", found.noiseBound())),
                List.of());
    }

    private static TestStudy.Result changes(
            List<StudyRow> rows, ChangePoint likeliest, double adjusted, List<ChangePoint> certain) {
        return new TestStudy.Result(
                !certain.isEmpty(),
                certain.isEmpty()
                        ? "no change for certain"
                        : certain.size() + (certain.size() == 1 ? " change" : " changes"),
                List.of(
                        new SeriesStudy.Figure("p value of the likeliest change", likeliest.pValue()),
                        adjusted(adjusted),
                        new SeriesStudy.Figure("before", likeliest.before(), true),
                        new SeriesStudy.Figure("after", likeliest.after(), true)),
                certain.stream().map(change -> mark(rows, change)).toList());
    }

    private static SeriesStudy.Figure adjusted(double p) {
        return new SeriesStudy.Figure("adjusted p (Holm)", p);
    }

    private static TestStudy.Mark mark(List<StudyRow> rows, ChangePoint change) {
        var size = change.size();
        double apart = Math.abs(change.after() - change.before());
        return new TestStudy.Mark(
                rows.get(change.index()).place(),
                size.value(),
                (change.kind() == ChangePoint.Kind.MEAN ? "mean " : "standard deviation ")
                        + Digits.of(change.before(), apart) + " before, " + Digits.of(change.after(), apart)
                        + " after; "
                        + (change.kind() == ChangePoint.Kind.MEAN ? "difference " : "ratio ")
                        + Digits.of(size.bounds().lower()) + " to "
                        + Digits.of(size.bounds().upper()) + " with 95 %; between "
                        + rows.get(change.earliest()).place() + " and "
                        + rows.get(Math.min(change.latest(), rows.size() - 1)).place());
    }

    private static TestStudy.Result trend(Trend trend, double adjusted, boolean positive) {
        return new TestStudy.Result(
                positive,
                !positive ? "no trend for certain" : trend.slope() > 0 ? "rising" : "falling",
                List.of(
                        new SeriesStudy.Figure("score S", trend.score()),
                        new SeriesStudy.Figure("z", trend.z()),
                        new SeriesStudy.Figure("p value", trend.pValue()),
                        adjusted(adjusted),
                        new SeriesStudy.Figure("tau", trend.tau()),
                        new SeriesStudy.Figure("Sen slope for each row", trend.slope(), true),
                        new SeriesStudy.Figure(
                                "slope, lower bound", trend.slopeBounds().lower()),
                        new SeriesStudy.Figure(
                                "slope, upper bound", trend.slopeBounds().upper()),
                        new SeriesStudy.Figure("variance widened for neighbours by", trend.inflation())),
                List.of());
    }

    private static TestStudy.Result ranks(List<StudyRow> rows, Pettitt test, double adjusted, boolean positive) {
        return new TestStudy.Result(
                positive,
                positive ? "changed" : "no change for certain",
                List.of(
                        new SeriesStudy.Figure("K", test.statistic()),
                        new SeriesStudy.Figure("p value", test.pValue()),
                        adjusted(adjusted)),
                positive
                        ? List.of(new TestStudy.Mark(
                                rows.get(test.index()).place(),
                                rows.get(test.index()).values().get(0),
                                "first after the change"))
                        : List.of());
    }
}
