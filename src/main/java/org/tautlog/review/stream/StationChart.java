package org.tautlog.review.stream;

import java.util.List;
import java.util.Objects;
import org.tautlog.spc.Answer;
import org.tautlog.spc.stream.StreamsChart;

/**
 * One feature of all spindles of a station on one chart: what moved all of them is told from what moved one.
 *
 * @param station the station; empty where the export does not say
 * @param feature what is charted
 * @param streams its streams, in the order of the chart's columns
 * @param times how many engines, or turns of an engine, the chart has
 * @param chart the chart, or why there is none
 */
public record StationChart(
        String station, ChartedFeature feature, List<Stream> streams, int times, Answer<StreamsChart> chart) {
    public StationChart {
        Objects.requireNonNull(station, "station");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(chart, "chart");
        streams = List.copyOf(streams);
    }

    /** {@return how many signals speak of one spindle apart from the others} */
    public int ownSignals() {
        return (int) chart.found().stream()
                .flatMap(found -> found.signals().stream())
                .filter(signal -> signal.kind().ofOneStream())
                .count();
    }

    /**
     * {@return whether the chart has a signal of one stream}
     *
     * @param stream which one
     */
    public boolean names(Stream stream) {
        int column = streams.indexOf(stream);
        return chart.found().map(found -> found.ownMovers().contains(column)).orElse(false);
    }
}
