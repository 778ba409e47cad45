package org.tautlog.spc.study;

import java.util.List;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.change.ChangeOptions;
import org.tautlog.spc.change.ChangePoint;
import org.tautlog.spc.change.Changes;
import org.tautlog.spc.change.Pettitt;
import org.tautlog.spc.change.Trend;

/** Looks for what changed along a series: resemblance of neighbours, level, spread, trend. */
public final class ChangeTests {
    private static final double CONFIDENCE = 0.95;

    private ChangeTests() {}

    /**
     * Tests a series.
     *
     * @param rows the rows in time order, one value each
     * @param options how it is done
     * @return the tests in reading order
     */
    public static List<TestStudy> of(List<StudyRow> rows, TestOptions options) {
        var x = rows.stream().mapToDouble(row -> row.values().get(0)).toArray();
        var search = new ChangeOptions(ChangeOptions.withDefaults().shortestSegment(), CONFIDENCE, options.level());
        var neighbours = Autocorrelation.ofDifferences(x);
        return List.of(
                new TestStudy("resemblance of neighbours", neighbours.map(ChangeTests::alike)),
                new TestStudy("level", Changes.allOfMean(x, search).flatMap(all -> levels(rows, x, all, search))),
                new TestStudy(
                        "spread", Changes.ofSpread(x, search).map(change -> change(rows, change, List.of(change)))),
                new TestStudy(
                        "trend (Mann-Kendall)",
                        Trend.of(x, CONFIDENCE)
                                .map(trend -> trend(
                                        trend, neighbours.found().orElse(Autocorrelation.none()), options.level()))),
                new TestStudy("level by ranks (Pettitt)", Pettitt.of(x).map(test -> ranks(rows, test, options))));
    }

    private static TestStudy.Result alike(Autocorrelation found) {
        boolean alike = found.allowed() > 0;
        return new TestStudy.Result(
                alike,
                alike
                        ? "neighbours resemble each other; the tests below allow for it, but for the one by ranks"
                        : "none",
                List.of(
                        new SeriesStudy.Figure("lag-1 autocorrelation", found.lagOne()),
                        new SeriesStudy.Figure("bound of chance", found.noiseBound())),
                List.of());
    }

    private static Answer<TestStudy.Result> levels(
            List<StudyRow> rows, double[] x, List<ChangePoint> all, ChangeOptions search) {
        return Changes.ofMean(x, search).map(likeliest -> change(rows, likeliest, all));
    }

    private static TestStudy.Result change(List<StudyRow> rows, ChangePoint likeliest, List<ChangePoint> all) {
        var certain = all.stream().filter(ChangePoint::significant).toList();
        return new TestStudy.Result(
                !certain.isEmpty(),
                certain.isEmpty()
                        ? "no change for certain"
                        : certain.size() + (certain.size() == 1 ? " change" : " changes"),
                List.of(
                        new SeriesStudy.Figure("p value of the likeliest change", likeliest.pValue()),
                        new SeriesStudy.Figure("before", likeliest.before()),
                        new SeriesStudy.Figure("after", likeliest.after())),
                certain.stream().map(change -> mark(rows, change)).toList());
    }

    private static TestStudy.Mark mark(List<StudyRow> rows, ChangePoint change) {
        var size = change.size();
        return new TestStudy.Mark(
                rows.get(change.index()).place(),
                size.value(),
                (change.kind() == ChangePoint.Kind.MEAN ? "mean " : "standard deviation ")
                        + Draft.digits(change.before()) + " before, " + Draft.digits(change.after()) + " after; "
                        + (change.kind() == ChangePoint.Kind.MEAN ? "difference " : "ratio ")
                        + Draft.digits(size.bounds().lower()) + " to "
                        + Draft.digits(size.bounds().upper()) + " with 95 %; between "
                        + rows.get(change.earliest()).place() + " and "
                        + rows.get(Math.min(change.latest(), rows.size() - 1)).place());
    }

    private static TestStudy.Result trend(Trend trend, Autocorrelation neighbours, double level) {
        double p = trend.pValue(neighbours);
        return new TestStudy.Result(
                p <= level,
                p > level ? "no trend for certain" : trend.slope() > 0 ? "rising" : "falling",
                List.of(
                        new SeriesStudy.Figure("score S", trend.score()),
                        new SeriesStudy.Figure("z", trend.z()),
                        new SeriesStudy.Figure("p value", p),
                        new SeriesStudy.Figure("tau", trend.tau()),
                        new SeriesStudy.Figure("Sen slope for each row", trend.slope()),
                        new SeriesStudy.Figure(
                                "slope, lower bound", trend.slopeBounds().lower()),
                        new SeriesStudy.Figure(
                                "slope, upper bound", trend.slopeBounds().upper())),
                List.of());
    }

    private static TestStudy.Result ranks(List<StudyRow> rows, Pettitt test, TestOptions options) {
        boolean positive = test.pValue() <= options.level();
        return new TestStudy.Result(
                positive,
                positive ? "changed" : "no change for certain",
                List.of(
                        new SeriesStudy.Figure("K", test.statistic()),
                        new SeriesStudy.Figure("p value", test.pValue())),
                positive
                        ? List.of(new TestStudy.Mark(
                                rows.get(test.index()).place(),
                                rows.get(test.index()).values().get(0),
                                "first after the change"))
                        : List.of());
    }
}
