package org.tautlog.cli.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.spc.Answer;
import org.tautlog.spc.chart.RunningLimits;
import org.tautlog.spc.study.FrozenLimits;
import org.tautlog.spc.study.LongSeries;
import org.tautlog.spc.study.SeriesStudy;
import org.tautlog.spc.study.StudyKind;
import org.tautlog.spc.study.StudyOptions;

/**
 * The charts of a table that is too long to keep: one pass over the file for the limits, unless they are frozen or stated, and
 * one for the points.
 */
final class LongCharting {
    /** Most rows whose charts are kept whole; they take 220 MB. */
    static final int MOST_AT_ONCE = 1_000_000;

    private static final int MOST_GROUPS = 100;

    private LongCharting() {}

    /** The studies of each group, and how many rows could not be used. */
    record Found(int rejected, Map<String, Answer<SeriesStudy>> groups) {}

    static Found run(
            TableInputs table,
            StudyKind kind,
            List<String> values,
            StudyOptions options,
            Map<String, FrozenLimits> frozen,
            PrintWriter err)
            throws IOException {
        var passes = frozen.isEmpty() && options.known() == null
                ? firstPass(table, values)
                : Map.<String, RunningLimits>of();
        var charts = new LinkedHashMap<String, Answer<LongSeries>>();
        var scan = table.each(values, (line, numbers, texts) -> {
            var group = table.group(texts);
            var chart = charts.get(group);
            if (chart == null) {
                chart = begin(kind, options, frozen, passes, group);
                refuseMany(charts.size() + 1);
                charts.put(group, chart);
            }
            chart.found().ifPresent(series -> series.next(numbers[0], line));
        });
        TableInputs.say(scan.rejected(), scan.kept(), scan.problems(), err);
        var studies = new LinkedHashMap<String, Answer<SeriesStudy>>();
        charts.forEach((group, chart) -> studies.put(group, chart.flatMap(LongSeries::study)));
        return new Found(scan.rejected(), studies);
    }

    private static Map<String, RunningLimits> firstPass(TableInputs table, List<String> values) throws IOException {
        var passes = new LinkedHashMap<String, RunningLimits>();
        table.each(values, (line, numbers, texts) -> {
            passes.computeIfAbsent(table.group(texts), name -> new RunningLimits())
                    .accept(numbers[0]);
            refuseMany(passes.size());
        });
        return passes;
    }

    private static Answer<LongSeries> begin(
            StudyKind kind,
            StudyOptions options,
            Map<String, FrozenLimits> frozen,
            Map<String, RunningLimits> passes,
            String group) {
        var pass = passes.get(group);
        if (pass != null) {
            return LongSeries.phaseOne(kind, pass, options);
        }
        var known = options.known();
        return frozen.isEmpty() && known != null
                ? Answer.of(LongSeries.stated(kind, known, options))
                : Charting.limits(frozen, kind, group).map(limits -> LongSeries.phaseTwo(limits, options));
    }

    private static void refuseMany(int groups) {
        if (groups > MOST_GROUPS) {
            throw Refusal.wrongUse("more than " + MOST_GROUPS + " groups in a table of more than " + MOST_AT_ONCE
                    + " rows; chart fewer groups, or cut the file");
        }
    }
}
