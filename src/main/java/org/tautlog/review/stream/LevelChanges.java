package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tautlog.spc.Sample;
import org.tautlog.spc.change.ChangeOptions;
import org.tautlog.spc.change.ChangePoint;
import org.tautlog.spc.change.Changes;

/**
 * Levels that moved within a shift. Before the search a value far out is drawn in to {@value #REACH} robust standard
 * deviations from the median, so that one wild tightening neither fakes nor hides a change; the level of proof is shared
 * among all series searched (Bonferroni). A change by less than a step of the recording is none.
 */
public final class LevelChanges {
    private static final double REACH = 5;
    /** Turns a median absolute deviation into the standard deviation of a normal. */
    private static final double TO_SIGMA = 1.4826;

    private static final int SHORTEST_SEGMENT = 8;
    private static final double SIGNIFICANCE = 0.01;

    private LevelChanges() {}

    static int searched(List<StreamChart> charts) {
        return (int) charts.stream()
                .filter(chart -> chart.values().size() >= 2 * SHORTEST_SEGMENT)
                .count();
    }

    /**
     * Finds the levels that moved for certain.
     *
     * @param charts series in time order
     * @return the changes, surest first
     */
    public static List<Change> in(List<StreamChart> charts) {
        var options = new ChangeOptions(SHORTEST_SEGMENT, 0.95, SIGNIFICANCE / Math.max(1, searched(charts)));
        var found = new ArrayList<Change>();
        for (var chart : charts) {
            double step = Resolution.stepOf(chart.numbers());
            Changes.allOfMean(drawnIn(chart.values(), step), options)
                    .found()
                    .ifPresent(points -> points.stream()
                            .filter(point -> Resolution.tells(step, point.size().value()))
                            .forEach(point -> found.add(change(chart, point))));
        }
        return found.stream()
                .map(change -> withAlike(change, found, charts))
                .sorted(Comparator.comparingDouble(change -> change.point().pValue()))
                .toList();
    }

    private static Change change(StreamChart chart, ChangePoint point) {
        var tightenings = chart.tightenings();
        return new Change(
                chart.stream(),
                chart.feature(),
                point,
                tightenings.get(point.index()),
                tightenings.get(point.earliest()),
                tightenings.get(Math.min(point.latest(), tightenings.size() - 1)),
                1,
                1);
    }

    private static Change withAlike(Change change, List<Change> all, List<StreamChart> charts) {
        if (charts.stream().map(StreamChart::stream).distinct().count() == 1) {
            return change;
        }
        int alike = (int) all.stream()
                .filter(other -> alike(change, other, charts))
                .map(Change::stream)
                .distinct()
                .count();
        int streams = (int) charts.stream()
                .map(StreamChart::stream)
                .filter(stream -> stream.station().equals(change.stream().station()))
                .distinct()
                .count();
        return new Change(
                change.stream(),
                change.feature(),
                change.point(),
                change.first(),
                change.earliest(),
                change.latest(),
                alike,
                streams);
    }

    private static boolean alike(Change one, Change other, List<StreamChart> charts) {
        return one.feature() == other.feature()
                && one.stream().station().equals(other.stream().station())
                && Math.signum(one.point().size().value())
                        == Math.signum(other.point().size().value())
                && (one.equals(other) || overlap(one, other, charts));
    }

    /**
     * Two changes are of one time where the first tightenings after each may have been of the same moment, give or take one
     * tightening: the spindles of a station turn seconds apart.
     */
    private static boolean overlap(Change one, Change other, List<StreamChart> charts) {
        var a = chart(one, charts).tightenings();
        var b = chart(other, charts).tightenings();
        var oneFrom = a.get(Math.max(0, one.point().earliest() - 1)).time();
        var oneTo = a.get(Math.min(one.point().latest() + 1, a.size() - 1)).time();
        var otherFrom = b.get(other.point().earliest()).time();
        var otherTo = b.get(other.point().latest()).time();
        return oneFrom != null
                && oneTo != null
                && otherFrom != null
                && otherTo != null
                && !oneFrom.isAfter(otherTo)
                && !otherFrom.isAfter(oneTo);
    }

    private static StreamChart chart(Change change, List<StreamChart> charts) {
        return charts.stream()
                .filter(chart -> chart.stream().equals(change.stream()) && chart.feature() == change.feature())
                .findFirst()
                .orElseThrow();
    }

    /** The values, drawn in; robust deviations are at least half a step of the recording. */
    static double[] drawnIn(List<Double> values, double step) {
        var numbers = values.stream().mapToDouble(Double::doubleValue).toArray();
        Sample.varying(numbers, 2 * SHORTEST_SEGMENT, "a search for changes")
                .found()
                .ifPresent(sample -> {
                    double middle = sample.median();
                    double reach = REACH * Math.max(TO_SIGMA * sample.medianDeviation(), step / 2);
                    for (int i = 0; reach > 0 && i < numbers.length; i++) {
                        numbers[i] = Math.max(middle - reach, Math.min(middle + reach, numbers[i]));
                    }
                });
        return numbers;
    }
}
