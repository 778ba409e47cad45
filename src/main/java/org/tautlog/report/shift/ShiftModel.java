package org.tautlog.report.shift;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Verdict;
import org.tautlog.problem.Problem;
import org.tautlog.report.chart.ControlChart;
import org.tautlog.report.chart.ControlScale;
import org.tautlog.report.judged.ListedModel;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.ShiftClock;
import org.tautlog.report.words.Times;
import org.tautlog.review.FindingTally;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.StreamSummary;
import org.tautlog.review.stream.Stream;
import org.tautlog.review.stream.StreamChart;

/** Everything that the page's template shows, as words: the template itself neither counts nor formats. */
final class ShiftModel {
    private static final int MOST_STREAMS_CHARTED = 16;
    private static final int MOST_PROBLEMS = 40;
    private static final int MOST_LOTS = 3;

    private ShiftModel() {}

    static Map<String, Object> of(ShiftReview review, Provenance provenance, Evidence evidence) {
        var model = new HashMap<String, Object>();
        var specification = review.specification();
        model.put("title", specification.name());
        model.put("version", specification.version());
        model.put("specificationFile", provenance.specificationFile());
        model.put("span", Times.span(review.first(), review.last()));
        model.put("tightenings", review.counts().total());
        model.put("engines", review.engines());
        model.put("safety", SafetyNote.TEXT);
        var clock = ShiftClock.of(review);
        model.put("unsafe", ShiftAnswers.unsafe(review));
        model.put("changes", ShiftAnswers.changes(review));
        model.put("where", ShiftAnswers.where(review));
        model.put("since", ShiftAnswers.since(review));
        model.put("actions", actions(review));
        model.put("tested", review.seriesSearched() > 0);
        var hold = ShiftAnswers.hold(review);
        model.put("hold", hold);
        model.put("holdMore", review.enginesHeld().size() - hold.size());
        model.put("verdicts", verdicts(review));
        model.put("firstPass", Figures.percent(review.firstPass().share()));
        model.put("firstAttempts", review.firstPass().attempts());
        model.put(
                "listed",
                review.listed().stream()
                        .map(listed -> ListedModel.of(listed, specification.window(), clock))
                        .toList());
        model.put("unlisted", review.unlisted());
        model.put("streams", review.streams().stream().map(ShiftModel::stream).toList());
        model.put("tallies", tallies(review.tallies(), clock));
        model.put(
                "allChanges",
                review.changes().stream()
                        .map(change -> ShiftAnswers.sentence(change, clock))
                        .toList());
        model.put("series", review.seriesSearched());
        StreamsModel.addTo(model, review);
        model.put("charts", charts(review));
        model.put(
                "chartedStreams",
                Math.min(MOST_STREAMS_CHARTED, review.streams().size()));
        model.put("files", review.imported().files());
        model.put("filesIgnored", review.imported().filesIgnored());
        model.put("kept", review.imported().kept());
        model.put("rejected", review.imported().rejected());
        model.put("problems", sentences(review.imported().problems()));
        model.put("problemsLeft", Math.max(0, review.imported().problems().size() - MOST_PROBLEMS));
        model.put("assumptions", byFile(review.imported().assumptions()));
        model.put("evidence", Map.of("file", evidence.file(), "sha256", evidence.sha256()));
        model.put("program", provenance.programVersion());
        model.put("written", Times.minutes(provenance.writtenAt()));
        return model;
    }

    private static List<Map<String, Object>> actions(ShiftReview review) {
        return review.actions().stream()
                .map(action -> Map.<String, Object>of(
                        "title", Sentence.capital(titles(action.codes())),
                        "where", action.where(),
                        "action", action.action()))
                .toList();
    }

    private static String titles(List<FindingCode> codes) {
        return codes.stream().map(FindingCode::title).collect(Collectors.joining("; "));
    }

    private static List<Map<String, Object>> verdicts(ShiftReview review) {
        var counts = review.counts();
        return List.of(Verdict.NONCONFORMING, Verdict.UNJUDGED, Verdict.REVIEW, Verdict.CONFORMING).stream()
                .map(verdict -> Map.<String, Object>of(
                        "word", verdict.word(),
                        "count", counts.of(verdict),
                        "share",
                                Figures.percent(
                                        counts.total() == 0 ? 0 : (double) counts.of(verdict) / counts.total())))
                .toList();
    }

    private static Map<String, Object> stream(StreamSummary summary) {
        var counts = summary.counts();
        return Map.ofEntries(
                Map.entry("station", summary.stream().station()),
                Map.entry("spindle", summary.stream().spindle()),
                Map.entry("total", counts.total()),
                Map.entry("nonconforming", counts.of(Verdict.NONCONFORMING)),
                Map.entry("unjudged", counts.of(Verdict.UNJUDGED)),
                Map.entry("review", counts.of(Verdict.REVIEW)),
                Map.entry("conforming", counts.of(Verdict.CONFORMING)),
                Map.entry("firstPass", Figures.percent(summary.firstPass().share())),
                Map.entry("finalTorque", Figures.of(summary.medianFinalTorqueNm(), 1, "–")),
                Map.entry("torqueRate", Figures.of(summary.medianTorqueRateNmPerDeg(), 4, "–")),
                Map.entry("turn", Figures.of(summary.medianTurnDeg(), 1, "–")));
    }

    private static List<Map<String, Object>> tallies(List<FindingTally> tallies, ShiftClock clock) {
        int most = tallies.stream().mapToInt(FindingTally::tightenings).max().orElse(1);
        return tallies.stream()
                .map(tally -> Map.<String, Object>of(
                        "title", Sentence.capital(tally.code().title()),
                        "severity", tally.severity().word(),
                        "count", tally.tightenings(),
                        "leading", tally.leading(),
                        "bar", Math.round(100.0 * tally.tightenings() / most),
                        "where", tally.mostIn().words() + " (" + tally.mostInCount() + ")",
                        "lots", lots(tally.lots()),
                        "first", clock.words(tally.first()),
                        "last", clock.words(tally.last())))
                .toList();
    }

    private static String lots(List<String> lots) {
        return lots.size() > MOST_LOTS ? lots.size() + " lots" : String.join(", ", lots);
    }

    /** Streams with the most signals come first where there are more than a page should hold. */
    private static List<Map<String, Object>> charts(ShiftReview review) {
        Map<Stream, List<StreamChart>> byStream = review.charts().stream()
                .collect(Collectors.groupingBy(StreamChart::stream, LinkedHashMap::new, Collectors.toList()));
        var kept = byStream.entrySet().stream()
                .sorted(Comparator.comparingInt(entry -> -entry.getValue().stream()
                        .mapToInt(chart -> chart.signals().size())
                        .sum()))
                .limit(MOST_STREAMS_CHARTED)
                .sorted(Map.Entry.comparingByKey())
                .toList();
        var clock = ShiftClock.of(review);
        var models = new ArrayList<Map<String, Object>>();
        for (var entry : kept) {
            models.add(Map.of(
                    "stream",
                    entry.getKey().words(),
                    "charts",
                    entry.getValue().stream()
                            .filter(chart -> drawn(chart, review))
                            .map(chart -> chart(
                                    chart,
                                    ControlScale.of(chart, review.charts()),
                                    "c" + models.size() + '-' + chart.feature().name(),
                                    clock))
                            .toList()));
        }
        return models;
    }

    /** The three features that every programme has; of the others those that something happened to. */
    private static boolean drawn(StreamChart chart, ShiftReview review) {
        return switch (chart.feature()) {
            case FINAL_TORQUE, TORQUE_RATE, TURN -> true;
            case ONSET_TORQUE, ONSET_ANGLE, CLAMP_LOAD, SPRING_BACK ->
                review.peers().moved(chart.stream(), chart.feature())
                        || chart.lastingShifts().size() > 1;
        };
    }

    private static Map<String, Object> chart(StreamChart chart, ControlScale scale, String id, ShiftClock clock) {
        int n = chart.values().size();
        var why = chart.chart().whyMissing().orElse("");
        return Map.of(
                "title",
                Sentence.capital(chart.feature().title()),
                "unit",
                chart.feature().unit(),
                "n",
                n,
                "signals",
                chart.signals().size(),
                "aside",
                chart.aside().size(),
                "lasting",
                chart.lastingShifts().isEmpty()
                        ? ""
                        : "Weighted averages signal from "
                                + clock.words(chart.tightenings()
                                        .get(chart.lastingShifts().get(0).index()))
                                + '.',
                "basis",
                (why.isEmpty() ? chart.basis() : "no limits: " + why)
                        + (scale.common() ? "" : "; far from the station's others, on a scale of its own"),
                "svg",
                n == 0 ? "" : ControlChart.svg(chart, scale, id, ""));
    }

    private static List<Map<String, Object>> byFile(List<Problem> assumptions) {
        return assumptions.stream()
                .collect(Collectors.groupingBy(
                        assumption -> assumption.where().file(),
                        LinkedHashMap::new,
                        Collectors.mapping(Problem::what, Collectors.joining("; "))))
                .entrySet()
                .stream()
                .map(file -> Map.<String, Object>of("file", file.getKey(), "what", file.getValue()))
                .toList();
    }

    private static List<String> sentences(List<Problem> problems) {
        return problems.stream().limit(MOST_PROBLEMS).map(Problem::sentence).toList();
    }
}
