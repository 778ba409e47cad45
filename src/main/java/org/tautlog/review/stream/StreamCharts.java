package org.tautlog.review.stream;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.tautlog.judge.Judgement;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
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
    private static final Comparator<Judgement> BY_TIME = Comparator.comparing(judgement -> {
        var time = judgement.identity().time();
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
        var streams = new TreeMap<Stream, List<Judgement>>();
        judgements.stream()
                .filter(judgement -> judgement.identity().attempt() == 1)
                .sorted(BY_TIME)
                .forEach(judgement -> streams.computeIfAbsent(
                                Stream.of(judgement.identity()), stream -> new ArrayList<>())
                        .add(judgement));
        var charts = new ArrayList<StreamChart>();
        streams.forEach((stream, own) -> {
            for (var feature : ChartedFeature.values()) {
                charts.add(chart(stream, feature, own));
            }
        });
        return charts;
    }

    private static StreamChart chart(Stream stream, ChartedFeature feature, List<Judgement> judgements) {
        var found = judgements.stream()
                .filter(judgement -> feature.of(judgement.signature()).isFound())
                .toList();
        long faulty = found.stream().filter(SetAside::bearsFault).count();
        boolean setAside = faulty <= SetAside.LARGEST_SHARE * found.size();
        var values = new ArrayList<Double>();
        var tightenings = new ArrayList<TraceIdentity>();
        var aside = new ArrayList<SetAside>();
        for (var judgement : found) {
            double value = feature.of(judgement.signature()).number();
            if (setAside && SetAside.bearsFault(judgement)) {
                aside.add(new SetAside(values.size(), judgement.identity(), value));
            } else {
                values.add(value);
                tightenings.add(judgement.identity());
            }
        }
        var numbers = values.stream().mapToDouble(Double::doubleValue).toArray();
        var options = IndividualsOptions.withDefaults().withRules(RunRule.westernElectric());
        var phaseOne = IndividualsChart.phaseOne(numbers, options);
        Answer<Chart> chart = phaseOne.flatMap(
                        limits -> IndividualsChart.chart(limits.limits(), numbers, options.rules()))
                .map(ChartPair::location);
        Answer<Chart> averages = phaseOne.flatMap(
                limits -> EwmaChart.chart(EwmaLimits.of(limits.limits(), EwmaOptions.withDefaults()), numbers));
        var basis = phaseOne.found()
                .map(limits -> limits.said()
                        + faults(faulty, setAside)
                        + neighbours(limits.limits().neighbours()))
                .orElse("");
        return new StreamChart(stream, feature, tightenings, values, aside, chart, averages, basis);
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
