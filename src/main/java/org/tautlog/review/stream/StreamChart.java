package org.tautlog.review.stream;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.tautlog.spc.Answer;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartPoint;
import org.tautlog.trace.TraceIdentity;

/**
 * One feature of one stream, tightening by tightening in time order, first attempts only.
 *
 * @param stream the station and spindle
 * @param feature what is charted
 * @param tightenings whose points these are, in the chart's order
 * @param values the feature of each, in {@link ChartedFeature#unit()}
 * @param aside tightenings with a fault of their own, left out of the above
 * @param chart limits and signals of single values, or why there are none
 * @param averages the same values as exponentially weighted averages, which see small lasting shifts; or why not
 * @param basis one sentence on what the limits rest on; empty where there are none
 */
public record StreamChart(
        Stream stream,
        ChartedFeature feature,
        List<TraceIdentity> tightenings,
        List<Double> values,
        List<SetAside> aside,
        Answer<Chart> chart,
        Answer<Chart> averages,
        String basis) {
    public StreamChart {
        Objects.requireNonNull(stream, "stream");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(chart, "chart");
        Objects.requireNonNull(averages, "averages");
        Objects.requireNonNull(basis, "basis");
        tightenings = List.copyOf(tightenings);
        values = List.copyOf(values);
        aside = List.copyOf(aside);
        if (tightenings.size() != values.size()) {
            throw new IllegalArgumentException("a chart has " + values.size() + " values of " + tightenings.size()
                    + " tightenings; one each is needed");
        }
    }

    /**
     * {@return the points to look at, in time order: each beyond the limits, and of every unbroken run of points that break
     * another rule the first; empty where there are no limits}
     */
    public List<ChartPoint> signals() {
        var points = chart.found().map(Chart::points).orElse(List.of());
        return IntStream.range(0, points.size())
                .filter(i -> points.get(i).outside()
                        || (points.get(i).signals()
                                && (i == 0 || !points.get(i - 1).signals())))
                .mapToObj(points::get)
                .toList();
    }

    /** {@return the first point of each run of weighted averages beyond their limits, in time order} */
    public List<ChartPoint> lastingShifts() {
        var points = averages.found().map(Chart::points).orElse(List.of());
        return IntStream.range(0, points.size())
                .filter(i ->
                        points.get(i).signals() && (i == 0 || !points.get(i - 1).signals()))
                .mapToObj(points::get)
                .toList();
    }

    double[] numbers() {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
