package org.tautlog.review;

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
 * @param chart limits and signals, or why there are none
 * @param basis one sentence on what the limits rest on; empty where there are none
 */
public record StreamChart(
        Stream stream,
        ChartedFeature feature,
        List<TraceIdentity> tightenings,
        List<Double> values,
        Answer<Chart> chart,
        String basis) {
    public StreamChart {
        Objects.requireNonNull(stream, "stream");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(chart, "chart");
        Objects.requireNonNull(basis, "basis");
        tightenings = List.copyOf(tightenings);
        values = List.copyOf(values);
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
}
