package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
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
    private StreamStudy() {}

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
        var layout = StreamLayout.of(rows, streams);
        var table = layout.cells().toArray(double[][]::new);
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
                                int before = (int) chart.points().stream()
                                        .filter(point -> point.time() < time)
                                        .count();
                                draft.leftOut(new SeriesStudy.LeftOut(
                                        before + 1,
                                        layout.times().get(time) + ", " + streams.get(cell.index() % streams.size()),
                                        cell.value(),
                                        "difference " + Draft.beyond(cell.value(), cell.lower(), cell.upper())
                                                + ", round " + cell.round()));
                            }
                            doubtful(draft, StreamSaid.apart(chart, layout).keySet());
                            return draft.study();
                        }));
    }

    /** A stream that moved within the data has its centre between before and after: whoever keeps the limits must know. */
    private static void doubtful(Draft draft, Set<String> names) {
        if (names.isEmpty()) return;
        boolean one = names.size() == 1;
        draft.note((one ? "the centre of " : "the centres of ") + String.join(", ", names)
                + (one ? " rests" : " rest") + " on values that signal, so it may lie between before and after and a"
                + " direction be turned round; find the cause and leave those rows out before limits are kept");
    }

    private static String said(int removed, boolean settled) {
        return "limits from all streams, "
                + (removed == 0
                        ? "no value left out"
                        : removed + (removed == 1 ? " value" : " values") + " left out as beyond the limits")
                + (settled ? "" : "; values beyond the limits remain");
    }

    private static Draft study(
            StreamsChart chart, StreamLayout layout, int values, String basis, StudyOptions options) {
        var limits = chart.limits();
        var times = chart.points().stream()
                .map(point -> layout.times().get(point.time()))
                .toList();
        var draft = new Draft(
                StudyKind.STREAMS,
                values,
                times::get,
                basis,
                new FrozenLimits(StudyKind.STREAMS, limits, layout.streams()));
        draft.neighbours("the streams' mean", limits.common().neighbours(), options.neighbours());
        draft.neighbours("a stream's differences from the mean", limits.neighbours(), options.neighbours());
        if (!options.rules().equals(RunRule.limitsOnly()))
            draft.note(
                    "the run rules chosen watch the mean of the streams; single streams are always held against their"
                            + " limits, runs and sums");
        draft.lines(" of the mean of streams", chart.common().points().get(0));
        draft.figure("reach of deviations from own centre", limits.groupReach());
        draft.figure(
                "reach of differences from the mean",
                limits.ownReach(layout.streams().size()));
        draft.figure("longest run as the extreme stream", limits.longestRun());
        draft.figure("slack k of one stream's sums", StreamsLimits.SLACK);
        draft.figure("decision value h of one stream's sums", limits.cusumDecision());
        draft.figure(
                "standard deviation behind k and h",
                limits.sumSigma(layout.streams().size()));
        for (int j = 0; j < layout.streams().size(); j++) {
            var centre = limits.centres().get(j);
            if (centre == null)
                draft.note("stream " + layout.streams().get(j) + " has too few values and is not charted");
            else draft.figure("centre of " + layout.streams().get(j), centre);
        }
        draft.panelOnly(StreamSaid.MEAN, true, new PanelLine("mean", chart.common()));
        var points = chart.points();
        draft.panelOnly(
                StreamSaid.DEVIATIONS,
                true,
                line("largest", limits.groupReach(), points, StreamPoint::largestDeviation),
                line("smallest", limits.groupReach(), points, StreamPoint::smallestDeviation));
        var own = IntStream.range(0, layout.streams().size())
                .filter(j -> limits.centres().get(j) != null)
                .mapToObj(j -> difference(j, chart, layout))
                .filter(line -> !line.chart().points().isEmpty())
                .toArray(PanelLine[]::new);
        draft.panelOnly(StreamSaid.DIFFERENCES, true, own);
        draft.panelOnly(StreamSaid.SUMS, false, sums(chart, layout));
        StreamSaid.of(chart, layout).forEach(draft::signal);
        return draft;
    }

    /** The largest sums of all, and those of each stream whose sum signals. */
    private static PanelLine[] sums(StreamsChart chart, StreamLayout layout) {
        double decision = chart.limits().cusumDecision();
        var points = chart.points();
        var lines = new ArrayList<PanelLine>();
        lines.add(line("largest upper", decision, points, StreamPoint::upperSum));
        lines.add(line("largest lower", decision, points, point -> -point.lowerSum()));
        StreamSaid.apart(chart, layout).forEach((name, kinds) -> {
            int j = layout.streams().indexOf(name);
            if (kinds.contains(StreamSignal.Kind.OWN_RISE))
                lines.add(
                        line(name, decision, points, point -> point.upperSums().get(j)));
            if (kinds.contains(StreamSignal.Kind.OWN_FALL))
                lines.add(
                        line(name, decision, points, point -> -point.lowerSums().get(j)));
        });
        return lines.toArray(PanelLine[]::new);
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
    private static PanelLine difference(int stream, StreamsChart chart, StreamLayout layout) {
        var limits = chart.limits();
        double centre = java.util.Objects.requireNonNull(limits.centres().get(stream));
        var seen = IntStream.range(0, chart.points().size())
                .filter(i -> !Double.isNaN(layout.cell(chart.points().get(i).time(), stream)))
                .toArray();
        var drawn = Chart.draw(
                ChartKind.DIFFERENCE,
                Arrays.stream(seen)
                        .mapToDouble(i -> layout.cell(chart.points().get(i).time(), stream)
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
        return new PanelLine(layout.streams().get(stream), new Chart(ChartKind.DIFFERENCE, placed));
    }
}
