package org.tautlog.review;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.tautlog.judge.Judgement;
import org.tautlog.spc.Answer;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartPair;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.RunRule;
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
        var values = new ArrayList<Double>();
        var tightenings = new ArrayList<TraceIdentity>();
        for (var judgement : judgements) {
            feature.of(judgement.signature()).value().ifPresent(value -> {
                values.add(value);
                tightenings.add(judgement.identity());
            });
        }
        var numbers = values.stream().mapToDouble(Double::doubleValue).toArray();
        var options = IndividualsOptions.withDefaults().withRules(RunRule.westernElectric());
        var phaseOne = IndividualsChart.phaseOne(numbers, options);
        Answer<Chart> chart = phaseOne.flatMap(
                        found -> IndividualsChart.chart(found.limits(), numbers, options.rules()))
                .map(ChartPair::location);
        var basis = phaseOne.found().map(found -> found.said()).orElse("");
        return new StreamChart(stream, feature, tightenings, values, chart, basis);
    }
}
