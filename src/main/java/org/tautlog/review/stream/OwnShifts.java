package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tautlog.spc.Answer;
import org.tautlog.spc.change.ChangeOptions;
import org.tautlog.spc.change.ChangePoint;
import org.tautlog.spc.change.Changes;
import org.tautlog.spc.compare.Adjustment;
import org.tautlog.spc.stream.StreamsChart;
import org.tautlog.spc.stream.StreamsOptions;

/**
 * Looks for spindles that moved apart from the others of their station. A spindle that moves also moves what the others
 * are compared with; so the surest step is taken first, taken out of the table, and the others are compared again.
 */
final class OwnShifts {
    private static final int SHORTEST_SEGMENT = 8;

    /** What was found at all stations. */
    record Found(List<StationChart> charts, List<OwnShift> shifts) {}

    private record Searched(
            StationChart chart,
            int column,
            StationTable.Differences differences,
            Answer<ChangePoint> point,
            double resolution) {}

    private OwnShifts() {}

    static Found in(List<StreamChart> charts) {
        var groups = new TreeMap<String, Map<ChartedFeature, List<StreamChart>>>();
        for (var chart : charts) {
            groups.computeIfAbsent(chart.stream().station(), unused -> new TreeMap<>())
                    .computeIfAbsent(chart.feature(), unused -> new ArrayList<>())
                    .add(chart);
        }
        double entry = OwnShift.LEVEL / Math.max(1, charts.size());
        var stations = new ArrayList<StationChart>();
        var searched = new ArrayList<Searched>();
        groups.forEach((station, features) -> features.forEach((feature, own) -> {
            var table = StationTable.of(own);
            double resolution = Resolution.stepOf(own);
            var chart = chart(station, feature, table, resolution);
            stations.add(chart);
            searched.addAll(search(chart, table, entry, resolution));
        }));
        return new Found(List.copyOf(stations), judged(searched));
    }

    private static StationChart chart(String station, ChartedFeature feature, StationTable table, double resolution) {
        var cells = table.cells();
        var options = StreamsOptions.withDefaults();
        Answer<StreamsChart> chart = StreamsChart.phaseOne(cells, options)
                .flatMap(phase -> Resolution.fine(phase.limits(), phase.limits().ownSigma(), resolution))
                .flatMap(limits -> StreamsChart.chart(limits, cells, options));
        return new StationChart(station, feature, table.streams(), cells.length, chart);
    }

    private static List<Searched> search(StationChart chart, StationTable table, double entry, double resolution) {
        var known = new HashMap<Integer, StationTable.Step>();
        var taken = new HashMap<Integer, Searched>();
        while (true) {
            var all = new ArrayList<Searched>();
            Searched surest = null;
            for (int j = 0; j < table.streams().size(); j++) {
                var before = taken.get(j);
                var one = before == null ? searched(chart, table, j, known, resolution) : before;
                all.add(one);
                if (before == null && told(one) && p(one) <= entry && (surest == null || p(one) < p(surest))) {
                    surest = one;
                }
            }
            if (surest == null) {
                return all;
            }
            var point = surest.point().orThrow();
            taken.put(surest.column(), surest);
            var first = surest.differences().tightenings().get(point.index());
            known.put(
                    surest.column(),
                    table.step(surest.column(), first, point.size().value()));
        }
    }

    private static Searched searched(
            StationChart chart,
            StationTable table,
            int column,
            Map<Integer, StationTable.Step> known,
            double resolution) {
        var differences = table.differences(column, known);
        var options = new ChangeOptions(SHORTEST_SEGMENT, 0.95, OwnShift.LEVEL);
        return new Searched(
                chart,
                column,
                differences,
                Changes.ofMean(LevelChanges.drawnIn(differences.values(), resolution), options),
                resolution);
    }

    private static boolean told(Searched one) {
        return one.point()
                .found()
                .map(point -> Resolution.tells(one.resolution(), point.size().value()))
                .orElse(false);
    }

    private static double p(Searched one) {
        return one.point().found().map(ChangePoint::pValue).orElse(1.0);
    }

    private static List<OwnShift> judged(List<Searched> searched) {
        var compared =
                searched.stream().filter(one -> one.point().found().isPresent()).toList();
        var adjusted = Adjustment.BENJAMINI_HOCHBERG.adjust(
                compared.stream().mapToDouble(OwnShifts::p).toArray());
        var shifts = new ArrayList<OwnShift>();
        for (var one : searched) {
            int place = compared.indexOf(one);
            double p = place < 0 ? 1 : adjusted[place];
            var stream = one.chart().streams().get(one.column());
            shifts.add(new OwnShift(
                    stream,
                    one.chart().feature(),
                    one.differences().tightenings(),
                    one.differences().values(),
                    one.point().found().orElse(null),
                    one.chart().streams().size() < 2
                            ? "the station has no other spindle to compare with"
                            : one.point().whyMissing().orElse(""),
                    p,
                    place >= 0 && p <= OwnShift.LEVEL && told(one),
                    one.chart().names(stream),
                    one.chart().streams().size()));
        }
        return List.copyOf(shifts);
    }
}
