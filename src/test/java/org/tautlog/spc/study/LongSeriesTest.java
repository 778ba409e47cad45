package org.tautlog.spc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.chart.RunningLimits;

class LongSeriesTest {
    private static final StudyOptions USUAL = StudyOptions.withDefaults();
    private static final StudyOptions KEEP_ALL = new StudyOptions(
            RunRule.nelson(),
            null,
            null,
            USUAL.lambda(),
            USUAL.reference(),
            USUAL.decision(),
            USUAL.headStart(),
            null,
            USUAL.neighbours(),
            PhaseOneOptions.keepAll(),
            null);

    @ParameterizedTest
    @EnumSource(names = {"INDIVIDUALS", "EWMA", "CUSUM"})
    void a_series_that_could_be_kept_is_charted_value_by_value_as_it_is_whole(StudyKind kind) {
        var values = shifted(900);
        var whole = SeriesStudies.phaseOne(kind, List.of("x"), rows(values), KEEP_ALL)
                .orThrow();
        var running = running(kind, values, KEEP_ALL);
        assertTrue(running.signalCount() > 50, kind + " signals " + running.signalCount());
        assertEquals(names(whole), names(running));
        for (int i = 0; i < whole.figures().size(); i++) {
            double figure = whole.figures().get(i).value();
            assertEquals(figure, running.figures().get(i).value(), 1e-9 * Math.abs(figure) + 1e-12);
        }
        var held = LongSeries.phaseTwo(whole.limits(), KEEP_ALL);
        for (int i = 0; i < values.length; i++) held.next(values[i], i + 2);
        var again = held.study().orThrow();
        assertEquals(whole.panels(), again.panels());
        assertEquals(
                whole.figures().stream()
                        .filter(figure -> !figure.name().equals("standard deviation behind k and h"))
                        .toList(),
                again.figures());
        assertEquals(whole.signalCount(), again.signalCount());
        assertEquals(firstOfEachPanel(whole), again.signals());
        assertEquals(whole.points(), again.points());
        assertEquals(whole.values(), again.values());
    }

    @Test
    void of_a_long_series_the_least_and_greatest_points_stay_drawn() {
        var values = Simulated.normal(3, 50_000);
        values[20_000] = 40;
        values[30_001] = -30;
        var study = running(StudyKind.INDIVIDUALS, values, USUAL);
        var points = study.panels().get(0).lines().get(0).chart().points();
        assertTrue(points.size() > 700 && points.size() <= 2000, points.size() + " points drawn");
        assertTrue(points.stream().anyMatch(point -> point.index() == 20_000 && point.value() == 40));
        assertTrue(points.stream().anyMatch(point -> point.index() == 30_001 && point.value() == -30));
        assertTrue(IntStream.range(1, points.size())
                .allMatch(i -> points.get(i - 1).index() < points.get(i).index()));
        assertEquals(50_000, study.points());
    }

    @Test
    void ten_million_values_are_charted_in_one_pass_with_the_false_alarms_of_theory() {
        var known = new StudyOptions.Known(0, 1);
        var charts = new EnumMap<StudyKind, LongSeries>(StudyKind.class);
        for (var kind : List.of(StudyKind.INDIVIDUALS, StudyKind.EWMA, StudyKind.CUSUM))
            charts.put(kind, LongSeries.stated(kind, known, USUAL));
        var pass = new RunningLimits();
        var sampler = Simulated.normal(205);
        int n = 10_000_000;
        for (int i = 0; i < n; i++) {
            double x = sampler.sample();
            int line = i + 2;
            pass.accept(x);
            charts.values().forEach(chart -> chart.next(x, line));
        }
        var limits = pass.limits(USUAL.individuals()).orThrow();
        assertEquals(0, limits.centre(), 4 / Math.sqrt(n));
        assertEquals(1, limits.sigma(), 4 / Math.sqrt(n));
        var individuals = charts.get(StudyKind.INDIVIDUALS).study().orThrow();
        assertEquals(2 * LongLine.MOST_SIGNALS, individuals.signals().size());
        double beyond = 1 - NormalDistribution.of(0, 1).probability(-3, 3);
        double range = 2
                * NormalDistribution.of(0, Math.sqrt(2))
                        .survivalProbability(individuals.figures().get(5).value());
        assertEquals(
                n * (beyond + range),
                individuals.signalCount(),
                4 * Math.sqrt(2.0 * n * (beyond + 3 * range)),
                "points beyond limits");
        int ewma = charts.get(StudyKind.EWMA).study().orThrow().signalCount();
        int cusum = charts.get(StudyKind.CUSUM).study().orThrow().signalCount();
        assertTrue(ewma > n / 1000 && ewma < n / 50, "EWMA signals " + ewma);
        assertTrue(cusum > n / 1000 && cusum < n / 20, "CUSUM signals " + cusum);
    }

    @Test
    void a_series_that_gives_no_limits_says_why() {
        var pass = new RunningLimits();
        assertEquals(
                Reason.TOO_FEW, pass.limits(USUAL.individuals()).missingFor().orElseThrow());
        for (int i = 0; i < 5; i++) pass.accept(7);
        assertEquals(
                Reason.NO_SPREAD, pass.limits(USUAL.individuals()).missingFor().orElseThrow());
    }

    private static SeriesStudy running(StudyKind kind, double[] values, StudyOptions options) {
        var pass = new RunningLimits();
        for (double x : values) pass.accept(x);
        var chart = LongSeries.phaseOne(kind, pass, options).orThrow();
        for (int i = 0; i < values.length; i++) chart.next(values[i], i + 2);
        return chart.study().orThrow();
    }

    private static double[] shifted(int n) {
        var values = Simulated.normal(206, n);
        for (int i = n / 2; i < n; i++) values[i] += 2.5;
        return values;
    }

    private static List<StudyRow> rows(double[] values) {
        return IntStream.range(0, values.length)
                .mapToObj(i -> new StudyRow("line " + (i + 2), List.of(values[i]), "", ""))
                .toList();
    }

    private static List<String> names(SeriesStudy study) {
        return study.figures().stream().map(SeriesStudy.Figure::name).toList();
    }

    private static List<StudySignal> firstOfEachPanel(SeriesStudy study) {
        return study.panels().stream()
                .flatMap(panel -> study.signals().stream()
                        .filter(signal -> signal.panel().equals(panel.title()))
                        .limit(LongLine.MOST_SIGNALS))
                .toList();
    }
}
