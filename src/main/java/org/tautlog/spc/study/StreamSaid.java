package org.tautlog.spc.study;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.tautlog.spc.Digits;
import org.tautlog.spc.chart.ChartPoint;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.stream.StreamPoint;
import org.tautlog.spc.stream.StreamSignal;
import org.tautlog.spc.stream.StreamsChart;

/** The signals of a chart of streams in words, each in the panel that shows it. */
final class StreamSaid {
    static final String MEAN = "mean of the streams";
    static final String DEVIATIONS = "deviations from own centre";
    static final String DIFFERENCES = "differences from the mean";
    static final String SUMS = "sums of one stream";

    private StreamSaid() {}

    /** All signals of a chart, in time order. */
    static List<StudySignal> of(StreamsChart chart, StreamLayout layout) {
        var byTime = chart.points().stream().collect(Collectors.toMap(StreamPoint::time, chart.points()::indexOf));
        return chart.signals().stream()
                .map(signal -> {
                    int point = Objects.requireNonNull(byTime.get(signal.time()));
                    var panel = switch (signal.kind()) {
                        case MEAN_MOVED -> MEAN;
                        case GROUP_HIGH, GROUP_LOW, RUN_LARGEST, RUN_SMALLEST -> DEVIATIONS;
                        case OWN_HIGH, OWN_LOW -> DIFFERENCES;
                        case OWN_RISE, OWN_FALL -> SUMS;
                    };
                    return new StudySignal(
                            point + 1,
                            layout.times().get(signal.time()),
                            panel,
                            plotted(signal, chart, layout),
                            said(signal, chart, point, layout));
                })
                .toList();
    }

    private static String said(StreamSignal signal, StreamsChart chart, int point, StreamLayout layout) {
        var name =
                signal.named().isPresent() ? layout.streams().get(signal.named().getAsInt()) : "";
        return switch (signal.kind()) {
            case MEAN_MOVED -> mean(chart, point);
            case GROUP_HIGH -> name + " far above its own centre";
            case GROUP_LOW -> name + " far below its own centre";
            case OWN_HIGH -> name + " above the other streams";
            case OWN_LOW -> name + " below the other streams";
            case RUN_LARGEST -> name + " the largest " + (int) signal.value() + " times running";
            case RUN_SMALLEST -> name + " the smallest " + (int) signal.value() + " times running";
            case OWN_RISE -> name + " rising against the other streams, " + sum(signal);
            case OWN_FALL -> name + " falling against the other streams, " + sum(signal);
        };
    }

    /** One stream that moves far takes the mean with it: together is said only where no stream is apart from the others. */
    private static String mean(StreamsChart chart, int point) {
        var mean = chart.common().points().get(point);
        var said = mean.broken().stream()
                .map(rule -> rule == RunRule.BEYOND_LIMITS ? beyond(mean) : rule.words())
                .collect(Collectors.joining("; "));
        return "mean " + said + (apart(chart, chart.points().get(point)) ? "" : "; all moved together");
    }

    private static String beyond(ChartPoint mean) {
        return mean.value() > mean.upper() ? "above its upper limit" : "below its lower limit";
    }

    private static boolean apart(StreamsChart chart, StreamPoint point) {
        double decision = chart.limits().cusumDecision();
        return point.upperSum() > decision
                || point.lowerSum() > decision
                || chart.signals().stream()
                        .anyMatch(signal ->
                                signal.time() == point.time() && signal.kind().ofOneStream());
    }

    private static String sum(StreamSignal signal) {
        return "sum " + Digits.of(signal.value()) + " past h " + Digits.of(signal.limit());
    }

    /** Where the signal stands in its panel: a run stands at the point that completes it. */
    private static double plotted(StreamSignal signal, StreamsChart chart, StreamLayout layout) {
        return switch (signal.kind()) {
            case RUN_LARGEST, RUN_SMALLEST -> {
                int stream = signal.named().orElseThrow();
                double centre =
                        Objects.requireNonNullElse(chart.limits().centres().get(stream), 0.0);
                yield layout.cell(signal.time(), stream) - centre;
            }
            case OWN_FALL -> -signal.value();
            case MEAN_MOVED, GROUP_HIGH, GROUP_LOW, OWN_HIGH, OWN_LOW, OWN_RISE -> signal.value();
        };
    }

    /** The streams that signal apart from the others, and in which direction, by their names. */
    static Map<String, List<StreamSignal.Kind>> apart(StreamsChart chart, StreamLayout layout) {
        return chart.signals().stream()
                .filter(signal -> signal.kind().ofOneStream())
                .collect(Collectors.groupingBy(
                        signal -> layout.streams().get(signal.named().orElseThrow()),
                        java.util.LinkedHashMap::new,
                        Collectors.mapping(StreamSignal::kind, Collectors.toList())));
    }
}
