package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.tautlog.spc.Digits;
import org.tautlog.spc.outlier.GeneralizedEsd;
import org.tautlog.spc.outlier.Grubbs;
import org.tautlog.spc.outlier.HampelWindow;
import org.tautlog.spc.outlier.ModifiedZ;
import org.tautlog.spc.outlier.RobustDistance;
import org.tautlog.spc.outlier.RobustOptions;

/**
 * Looks for values that do not belong with the others of their group. The running window flags beyond four robust deviations:
 * with 10 neighbours on either side that is 1 good value in 320, beyond three it would be 1 in 70 (simulated, NumPy).
 */
public final class OutlierTests {
    private static final double WINDOW_WIDTH = 4;

    private OutlierTests() {}

    /**
     * Tests one column by Grubbs, generalized ESD, modified z and a running window; several columns by robust distance.
     *
     * @param columns names of a row's values
     * @param rows the rows in time order, all with as many values as there are columns
     * @param options how it is done
     * @return the tests in reading order
     */
    public static List<TestStudy> of(List<String> columns, List<StudyRow> rows, TestOptions options) {
        if (columns.size() > 1) return List.of(together(columns, rows, options));
        var x = rows.stream().mapToDouble(row -> row.values().get(0)).toArray();
        return List.of(
                new TestStudy(
                        "one stray (Grubbs)",
                        Grubbs.of(x, options.level(), Grubbs.Side.EITHER)
                                .map(test -> result(
                                        rows,
                                        test.rejected() ? List.of(test.index()) : List.of(),
                                        i -> "beyond the critical value",
                                        List.of(
                                                new SeriesStudy.Figure("G", test.statistic()),
                                                new SeriesStudy.Figure("critical value", test.critical()),
                                                new SeriesStudy.Figure("p value", test.pValue()))))),
                new TestStudy(
                        "several strays (generalized ESD)",
                        GeneralizedEsd.of(x, strays(x.length, options), options.level())
                                .map(test -> result(rows, test.flagged(), i -> step(test, i), steps(test)))),
                new TestStudy(
                        "distance from the median (modified z)",
                        ModifiedZ.of(x, ModifiedZ.USUAL_LIMIT)
                                .map(test -> result(
                                        rows,
                                        test.flagged(),
                                        i -> "modified z "
                                                + Digits.of(test.scores().get(i)),
                                        List.of(
                                                new SeriesStudy.Figure("median", test.median(), true),
                                                new SeriesStudy.Figure(
                                                        "median absolute deviation", test.medianDeviation()),
                                                new SeriesStudy.Figure("limit", test.limit()))))),
                new TestStudy(
                        "distance from the neighbours (Hampel, " + options.halfWindow() + " on either side)",
                        HampelWindow.of(x, options.halfWindow(), WINDOW_WIDTH, 0)
                                .map(test -> window(rows, test))));
    }

    private static TestStudy together(List<String> columns, List<StudyRow> rows, TestOptions options) {
        var table = rows.stream()
                .map(row -> row.values().stream().mapToDouble(v -> v).toArray())
                .toArray(double[][]::new);
        var usual = RobustOptions.withDefaults();
        var robust = new RobustOptions(
                usual.share(), options.level() / Math.max(1, rows.size()), usual.starts(), usual.seed());
        return new TestStudy(
                "all columns together (robust distance)",
                RobustDistance.of(table, robust)
                        .map(test -> result(
                                rows,
                                test.flagged(),
                                i -> "distance "
                                        + Digits.of(Math.sqrt(test.distances().get(i))) + ", most of it by "
                                        + columns.get(Columns.largest(test.parts(table[i]))),
                                List.of(new SeriesStudy.Figure("limit of the distance", Math.sqrt(test.limit()))))));
    }

    /** Never more than a quarter of the values: beyond that they are no strays. */
    private static int strays(int n, TestOptions options) {
        return Math.max(1, Math.min(options.mostStrays(), n / 4));
    }

    private static List<SeriesStudy.Figure> steps(GeneralizedEsd test) {
        var figures = new ArrayList<SeriesStudy.Figure>();
        for (int i = 0; i < test.steps().size(); i++) {
            figures.add(
                    new SeriesStudy.Figure("R" + (i + 1), test.steps().get(i).statistic()));
            figures.add(new SeriesStudy.Figure(
                    "lambda" + (i + 1), test.steps().get(i).critical()));
        }
        return figures;
    }

    private static String step(GeneralizedEsd test, int index) {
        int place = 0;
        while (test.steps().get(place).index() != index) place++;
        return "step " + (place + 1);
    }

    private static TestStudy.Result window(List<StudyRow> rows, HampelWindow test) {
        return result(
                rows,
                test.flagged().stream().map(HampelWindow.Flagged::index).toList(),
                i -> test.flagged().stream()
                        .filter(flagged -> flagged.index() == i)
                        .map(flagged -> "median around it " + Digits.of(flagged.median(), flagged.reach()) + ", reach "
                                + Digits.of(flagged.reach()))
                        .findFirst()
                        .orElse(""),
                List.of(new SeriesStudy.Figure("width in robust deviations", WINDOW_WIDTH)));
    }

    private static TestStudy.Result result(
            List<StudyRow> rows, List<Integer> flagged, IntFunction<String> said, List<SeriesStudy.Figure> figures) {
        var marks = flagged.stream()
                .map(i -> new TestStudy.Mark(
                        rows.get(i).place(), rows.get(i).values().get(0), said.apply(i)))
                .toList();
        return new TestStudy.Result(
                !marks.isEmpty(), marks.isEmpty() ? "none" : marks.size() + " of " + rows.size(), figures, marks);
    }
}
