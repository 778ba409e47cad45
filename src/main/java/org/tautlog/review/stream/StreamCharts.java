package org.tautlog.review.stream;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TreeMap;
import org.tautlog.judge.Judgement;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartPair;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.timeweighted.EwmaChart;
import org.tautlog.spc.timeweighted.EwmaLimits;
import org.tautlog.spc.timeweighted.EwmaOptions;
import org.tautlog.trace.TraceIdentity;

/**
 * Charts of single values, stream by stream, in the order of time. Tightenings without a time keep their reading order
 * behind the others. Later attempts are left out: the bolt was not as new.
 */
public final class StreamCharts {
    private static final Comparator<Levels> BY_TIME = Comparator.comparing(levels -> {
        var time = levels.identity().time();
        return time == null ? Instant.MAX : time.toInstant();
    });

    private StreamCharts() {}

    /**
     * Charts every feature of every stream.
     *
     * @param judgements the judgements, in any order
     * @return the charts, stream by stream
     */
    public static List<StreamChart> of(List<Judgement> judgements) {
        return charted(judgements.stream().map(Levels::of).toList());
    }

    /**
     * Charts every feature of every stream.
     *
     * @param levels the levels of tightenings, in any order
     * @return the charts, stream by stream
     */
    public static List<StreamChart> charted(List<Levels> levels) {
        return series(levels).stream().map(StreamCharts::chart).toList();
    }

    /**
     * Series of every feature of every stream, for a search that needs no limits.
     *
     * @param levels the levels of tightenings, in any order
     * @return the series, stream by stream, as charts that have no limits
     */
    public static List<StreamChart> withoutLimits(List<Levels> levels) {
        Answer<Chart> none = Answer.missing(Reason.NOT_ASKED, "a search for changes needs no limits");
        return series(levels).stream()
                .map(one -> new StreamChart(
                        one.stream, one.feature, one.tightenings, one.values, one.aside, none, none, ""))
                .toList();
    }

    /** One feature of one stream, and how many tightenings bore a fault of their own. */
    private record Series(
            Stream stream,
            ChartedFeature feature,
            List<TraceIdentity> tightenings,
            List<Double> values,
            List<SetAside> aside,
            long faulty,
            boolean setAside) {}

    private static List<Series> series(List<Levels> levels) {
        var streams = new TreeMap<Stream, List<Levels>>();
        levels.stream()
                .filter(one -> one.identity().attempt() == 1)
                .sorted(BY_TIME)
                .forEach(one -> streams.computeIfAbsent(Stream.of(one.identity()), stream -> new ArrayList<>())
                        .add(one));
        var series = new ArrayList<Series>();
        streams.forEach((stream, own) -> {
            for (var feature : ChartedFeature.values()) {
                series.add(series(stream, feature, own));
            }
        });
        return series;
    }

    private static Series series(Stream stream, ChartedFeature feature, List<Levels> levels) {
        var found =
                levels.stream().filter(one -> one.values().containsKey(feature)).toList();
        long faulty = found.stream().filter(Levels::bearsFault).count();
        boolean setAside = faulty <= SetAside.LARGEST_SHARE * found.size();
        var values = new ArrayList<Double>();
        var tightenings = new ArrayList<TraceIdentity>();
        var aside = new ArrayList<SetAside>();
        for (var one : found) {
            double value = Objects.requireNonNull(one.values().get(feature));
            if (setAside && one.bearsFault()) {
                aside.add(new SetAside(values.size(), one.identity(), value));
            } else {
                values.add(value);
                tightenings.add(one.identity());
            }
        }
        return new Series(stream, feature, tightenings, values, aside, faulty, setAside);
    }

    private static StreamChart chart(Series series) {
        var numbers = series.values.stream().mapToDouble(Double::doubleValue).toArray();
        var options = IndividualsOptions.withDefaults().withRules(RunRule.westernElectric());
        double step = Resolution.stepOf(numbers);
        var limited = IndividualsChart.phaseOne(numbers, options)
                .flatMap(phase -> Resolution.fine(phase, phase.limits().sigma(), step));
        Answer<Chart> chart = limited.flatMap(
                        limits -> IndividualsChart.chart(limits.limits(), numbers, options.rules()))
                .map(ChartPair::location);
        Answer<Chart> averages = limited.flatMap(
                limits -> EwmaChart.chart(EwmaLimits.of(limits.limits(), EwmaOptions.withDefaults()), numbers));
        var basis = limited.found()
                .map(limits -> limits.said()
                        + faults(series.faulty, series.setAside)
                        + neighbours(limits.limits().neighbours()))
                .orElse("");
        return new StreamChart(
                series.stream, series.feature, series.tightenings, series.values, series.aside, chart, averages, basis);
    }

    private static String faults(long faulty, boolean setAside) {
        if (faulty == 0) {
            return "";
        }
        return setAside
                ? "; " + faulty + " with a fault of their own set aside"
                : "; " + faulty + " with a fault of their own are more than a quarter, so none was set aside";
    }

    private static String neighbours(Autocorrelation neighbours) {
        return neighbours.allowed() > 0
                ? String.format(
                        Locale.ROOT, "; widened, as neighbours resemble each other (r %.2f)", neighbours.allowed())
                : "";
    }
}
