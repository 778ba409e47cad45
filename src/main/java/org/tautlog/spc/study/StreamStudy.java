package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Digits;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartKind;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.stream.StreamPoint;
import org.tautlog.spc.stream.StreamSignal;
import org.tautlog.spc.stream.StreamsChart;
import org.tautlog.spc.stream.StreamsLimits;

/** Rows of parallel streams laid out by time and stream, and charted together. */
final class StreamStudy {
    private static final String DEVIATIONS = "deviations from own centre";
    private static final String DIFFERENCES = "differences from the mean";
    private static final String SUMS = "sums of one stream, in standard deviations";

    private StreamStudy() {}

    /** A table by time and stream, NaN where a stream was not seen, and what its rows and columns are called. */
    private record Layout(List<double[]> cells, List<String> times, List<String> streams) {}

    static Answer<SeriesStudy> of(List<StudyRow> all, StudyOptions options, @Nullable FrozenLimits frozen) {
        if (options.known() != null)
            return Answer.missing(Reason.NOT_ASKED, "streams have a centre and a deviation each; state none");
        var streams =
                frozen == null ? all.stream().map(StudyRow::stream).distinct().toList() : frozen.streams();
        var strangers = all.stream()
                .map(StudyRow::stream)
                .filter(name -> !streams.contains(name))
                .distinct()
                .toList();
        var rows = all.stream().filter(row -> streams.contains(row.stream())).toList();
        if (rows.isEmpty())
            return Answer.missing(Reason.UNEQUAL, "the frozen limits know no stream " + String.join(", ", strangers));
        var layout = layout(rows, streams);
        var table = layout.cells.toArray(double[][]::new);
        if (frozen != null) {
            var limits = (StreamsLimits) frozen.limits();
            return StreamsChart.chart(limits, table, options.streams()).map(chart -> {
                var draft = study(chart, layout, rows.size(), "frozen limits", options);
                strangers.forEach(
                        name -> draft.note("stream " + name + " is unknown to the frozen limits and is not charted"));
                streams.stream()
                        .filter(name ->
                                rows.stream().noneMatch(row -> row.stream().equals(name)))
                        .forEach(name -> draft.note(
                                "stream " + name + " of the frozen limits has no value here; nobody watched it"));
                return draft.study();
            });
        }
        return StreamsChart.phaseOne(table, options.streams())
                .flatMap(phase -> StreamsChart.chart(phase.limits(), table, options.streams())
                        .map(chart -> {
                            var draft = study(
                                    chart,
                                    layout,
                                    rows.size(),
                                    said(phase.removed().size(), phase.settled()),
                                    options);
                            for (var cell : phase.removed()) {
                                int time = cell.index() / streams.size();
                                draft.leftOut(new SeriesStudy.LeftOut(
                                        time + 1,
                                        layout.times.get(time) + ", " + streams.get(cell.index() % streams.size()),
                                        cell.value(),
                                        "difference " + Draft.beyond(cell.value(), cell.lower(), cell.upper())
                                                + ", round " + cell.round()));
                            }
                            return draft.study();
                        }));
    }

    private static String said(int removed, boolean settled) {
        return "limits from all streams, "
                + (removed == 0
                        ? "no value left out"
                        : removed + (removed == 1 ? " value" : " values") + " left out as beyond the limits")
                + (settled ? "" : "; values beyond the limits remain");
    }

    private static Layout layout(List<StudyRow> rows, List<String> streams) {
        var seen = new HashMap<String, Integer>();
        var times = new LinkedHashMap<String, double[]>();
        for (var row : rows) {
            int turn = seen.merge(row.stream() + '\n' + row.subgroup(), 1, Integer::sum);
            var time = row.subgroup().isEmpty()
                    ? "turn " + turn
                    : "time " + row.subgroup() + (turn == 1 ? "" : ", turn " + turn);
            var cells = times.computeIfAbsent(time, name -> {
                var empty = new double[streams.size()];
                Arrays.fill(empty, Double.NaN);
                return empty;
            });
            cells[streams.indexOf(row.stream())] = row.values().get(0);
        }
        return new Layout(new ArrayList<>(times.values()), List.copyOf(times.keySet()), streams);
    }

    private static Draft study(StreamsChart chart, Layout layout, int values, String basis, StudyOptions options) {
        var limits = chart.limits();
        var times = chart.points().stream()
                .map(point -> layout.times.get(point.time()))
                .toList();
        var draft = new Draft(
                StudyKind.STREAMS,
                values,
                times::get,
                basis,
                new FrozenLimits(StudyKind.STREAMS, limits, layout.streams));
        draft.neighbours("the streams' mean", limits.common().neighbours(), options.neighbours());
        draft.neighbours("a stream's differences from the mean", limits.neighbours(), options.neighbours());
        if (!options.rules().equals(RunRule.limitsOnly()))
            draft.note(
                    "the run rules chosen watch the mean of the streams; single streams are always held against their"
                            + " limits, runs and sums");
        draft.lines(" of the mean of streams", chart.common().points().get(0));
        draft.figure("reach of deviations from own centre", limits.groupReach());
        draft.figure("reach of differences from the mean", limits.ownReach(layout.streams.size()));
        draft.figure("longest run as the extreme stream", limits.longestRun());
        draft.figure("slack k of one stream's sums", StreamsLimits.SLACK);
        draft.figure("decision value h of one stream's sums", limits.cusumDecision());
        draft.figure("standard deviation behind k and h", limits.sumSigma(layout.streams.size()));
        for (int j = 0; j < layout.streams.size(); j++) {
            var centre = limits.centres().get(j);
            if (centre == null)
                draft.note("stream " + layout.streams.get(j) + " has too few values and is not charted");
            else draft.figure("centre of " + layout.streams.get(j), centre);
        }
        draft.panelOnly("mean of the streams", true, new PanelLine("mean", chart.common()));
        var points = chart.points();
        draft.panelOnly(
                DEVIATIONS,
                true,
                line("largest", limits.groupReach(), points, StreamPoint::largestDeviation),
                line("smallest", limits.groupReach(), points, StreamPoint::smallestDeviation));
        var own = IntStream.range(0, layout.streams.size())
                .filter(j -> limits.centres().get(j) != null)
                .mapToObj(j -> difference(j, chart, layout))
                .toArray(PanelLine[]::new);
        draft.panelOnly(DIFFERENCES, true, own);
        draft.panelOnly(
                SUMS,
                false,
                line("largest upper sum", limits.cusumDecision(), points, StreamPoint::upperSum),
                line("largest lower sum", limits.cusumDecision(), points, point -> -point.lowerSum()));
        for (var signal : chart.signals()) draft.signal(said(signal, chart, layout));
        return draft;
    }

    private static PanelLine line(
            String name, double reach, List<StreamPoint> points, java.util.function.ToDoubleFunction<StreamPoint> of) {
        return new PanelLine(
                name,
                Chart.draw(
                        ChartKind.DIFFERENCE,
                        points.stream().mapToDouble(of).toArray(),
                        i -> new Chart.Lines(-reach, 0, reach, 0, points.get(i).present()),
                        RunRule.limitsOnly()));
    }

    /** One stream's differences; where it was not seen it has no point. */
    private static PanelLine difference(int stream, StreamsChart chart, Layout layout) {
        var limits = chart.limits();
        double centre = java.util.Objects.requireNonNull(limits.centres().get(stream));
        var seen = IntStream.range(0, chart.points().size())
                .filter(i ->
                        !Double.isNaN(layout.cells.get(chart.points().get(i).time())[stream]))
                .toArray();
        var drawn = Chart.draw(
                ChartKind.DIFFERENCE,
                Arrays.stream(seen)
                        .mapToDouble(i -> layout.cells.get(chart.points().get(i).time())[stream]
                                - centre
                                - chart.points().get(i).common())
                        .toArray(),
                i -> {
                    int present = chart.points().get(seen[i]).present();
                    double reach = limits.ownReach(present);
                    return new Chart.Lines(-reach, 0, reach, 0, present);
                },
                RunRule.limitsOnly());
        var placed = drawn.points().stream()
                .map(p -> new org.tautlog.spc.chart.ChartPoint(
                        seen[p.index()], p.value(), p.lower(), p.centre(), p.upper(), p.n(), p.broken()))
                .toList();
        return new PanelLine(layout.streams.get(stream), new Chart(ChartKind.DIFFERENCE, placed));
    }

    private static StudySignal said(StreamSignal signal, StreamsChart chart, Layout layout) {
        int point = 1;
        for (var p : chart.points()) {
            if (p.time() == signal.time()) break;
            point++;
        }
        var name =
                signal.named().isPresent() ? layout.streams.get(signal.named().getAsInt()) : "";
        var said = switch (signal.kind()) {
            case MEAN_MOVED -> "all streams moved together";
            case GROUP_HIGH -> name + " far above its own centre";
            case GROUP_LOW -> name + " far below its own centre";
            case OWN_HIGH -> name + " above the other streams";
            case OWN_LOW -> name + " below the other streams";
            case RUN_LARGEST -> name + " the largest " + (int) signal.value() + " times running";
            case RUN_SMALLEST -> name + " the smallest " + (int) signal.value() + " times running";
            case OWN_RISE -> name + " rising against the other streams, " + sum(signal);
            case OWN_FALL -> name + " falling against the other streams, " + sum(signal);
        };
        var panel = switch (signal.kind()) {
            case MEAN_MOVED -> "mean of the streams";
            case GROUP_HIGH, GROUP_LOW, RUN_LARGEST, RUN_SMALLEST -> DEVIATIONS;
            case OWN_HIGH, OWN_LOW -> DIFFERENCES;
            case OWN_RISE, OWN_FALL -> SUMS;
        };
        return new StudySignal(point, layout.times.get(signal.time()), panel, plotted(signal, chart, layout), said);
    }

    private static String sum(StreamSignal signal) {
        return "sum " + Digits.of(signal.value()) + " past h " + Digits.of(signal.limit());
    }

    /** Where the signal stands in its panel: a run stands at the point that completes it. */
    private static double plotted(StreamSignal signal, StreamsChart chart, Layout layout) {
        return switch (signal.kind()) {
            case RUN_LARGEST, RUN_SMALLEST -> {
                int stream = signal.named().orElseThrow();
                double centre = java.util.Objects.requireNonNullElse(
                        chart.limits().centres().get(stream), 0.0);
                yield layout.cells.get(signal.time())[stream] - centre;
            }
            case OWN_FALL -> -signal.value();
            case MEAN_MOVED, GROUP_HIGH, GROUP_LOW, OWN_HIGH, OWN_LOW, OWN_RISE -> signal.value();
        };
    }
}
