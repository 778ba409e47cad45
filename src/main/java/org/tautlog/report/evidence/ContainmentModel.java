package org.tautlog.report.evidence;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.report.chart.BracketChart;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.Times;
import org.tautlog.review.evidence.BracketCourse;
import org.tautlog.review.evidence.Contained;
import org.tautlog.review.evidence.Containment;
import org.tautlog.review.evidence.EngineHold;

/** Everything that the containment's template shows, as words. */
final class ContainmentModel {
    private static final int MOST_ENGINES = 200;
    private static final int MOST_ROWS = 400;
    private static final int MOST_CHARTS = 12;

    private ContainmentModel() {}

    static Map<String, Object> of(EngineHold hold, Provenance provenance, Evidence evidence) {
        var engines = hold.engines();
        var model = new HashMap<String, Object>();
        model.put("suspicion", Sentence.capital(hold.suspicion()));
        model.put("engineCount", engines.size());
        model.put("engineWord", engines.size() == 1 ? "engine" : "engines");
        model.put("engines", engines.subList(0, Math.min(MOST_ENGINES, engines.size())));
        model.put("enginesLeft", Math.max(0, engines.size() - MOST_ENGINES));
        model.put("brackets", brackets(hold));
        model.put("problems", ContainmentAnswers.problems(hold));
        model.put("safety", SafetyNote.TEXT);
        model.put("archive", provenance.specificationFile());
        model.put("evidence", Map.of("file", evidence.file(), "sha256", evidence.sha256()));
        model.put("program", provenance.programVersion());
        model.put("written", Times.minutes(provenance.writtenAt()));
        return model;
    }

    private static List<Map<String, Object>> brackets(EngineHold hold) {
        var containments = hold.places();
        var brackets = new ArrayList<Map<String, Object>>();
        int room = MOST_ROWS;
        var charts = charts(containments);
        for (var one : containments) {
            var engines = one.contained().stream()
                    .collect(Collectors.groupingBy(Contained::serial, LinkedHashMap::new, Collectors.toList()));
            int shown = Math.min(room, engines.size());
            room -= shown;
            brackets.add(Map.of(
                    "title", ContainmentAnswers.title(one),
                    "chart", charts.getOrDefault(one, ""),
                    "charted", one.course().map(ContainmentModel::charted).orElse(""),
                    "held",
                            Figures.count(one.engines().size(), "engine", "engines") + ", "
                                    + one.contained().size() + " of " + one.searched() + " tightenings",
                    "span", ContainmentAnswers.bracket(one),
                    "margins", ContainmentAnswers.margins(one),
                    "lots", ContainmentAnswers.lots(one),
                    "rows",
                            engines.values().stream()
                                    .limit(shown)
                                    .map(ofEngine -> row(ofEngine, hold))
                                    .toList(),
                    "rowsLeft", engines.size() - shown));
        }
        return brackets;
    }

    /** Charts of the first brackets; those of one feature on one scale, so that spindles can be compared. */
    private static Map<Containment, String> charts(List<Containment> containments) {
        var drawn = containments.stream()
                .filter(one -> one.course().isPresent())
                .limit(MOST_CHARTS)
                .toList();
        var charts = new HashMap<Containment, String>();
        for (var one : drawn) {
            var course = one.course().orElseThrow();
            var alike = drawn.stream()
                    .flatMap(other -> other.course().stream())
                    .filter(other -> other.feature() == course.feature())
                    .toList();
            charts.put(one, BracketChart.svg(course, BracketChart.scale(alike), one.place(), "b" + charts.size()));
        }
        return charts;
    }

    private static String charted(BracketCourse course) {
        return "n = " + course.n() + ", those of the tightenings " + (course.first() + 1) + " to " + (course.last() + 1)
                + " whose " + course.feature().title() + " was charted"
                + (course.points().size() < course.n() ? ", the least and greatest of each stretch" : "")
                + ". Shaded: what is held. Squares: what the search started from. Triangles: beyond the scale."
                + (course.change().isPresent()
                        ? " Dashed: where the level moved or came back, likeliest; the bar at its foot: where it may have (95 %)."
                        : " No level moved or came back for certain around the suspects.")
                + (course.explained().isPresent()
                        ? " Dotted: from there on the new level counts as good, on a person's word."
                        : "");
    }

    /** One engine of a bracket, with its gravest verdict. */
    private static Map<String, Object> row(List<Contained> ofEngine, EngineHold hold) {
        var serial = ofEngine.get(0).serial();
        var decided = ContainmentAnswers.decided(hold.decisions(serial));
        var judgements =
                ofEngine.stream().flatMap(one -> one.judgement().stream()).toList();
        var why = ofEngine.stream().map(one -> one.reason().words()).distinct().collect(Collectors.joining(", "));
        return judgements.isEmpty()
                ? Map.of("serial", serial, "why", why, "recorded", false, "decided", decided)
                : row(serial, why, judgements, decided);
    }

    private static Map<String, Object> row(String serial, String why, List<BriefJudgement> judgements, String decided) {
        var gravest = judgements.stream()
                .map(BriefJudgement::verdict)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        long graves =
                judgements.stream().filter(one -> one.verdict() == gravest).count();
        var times = judgements.stream()
                .flatMap(one -> Optional.ofNullable(one.identity().time()).stream())
                .sorted()
                .toList();
        return Map.of(
                "serial",
                serial,
                "why",
                why,
                "recorded",
                true,
                "decided",
                decided,
                "verdict",
                gravest.word(),
                "share",
                judgements.size() == 1 ? "" : graves + " of " + judgements.size(),
                "bolts",
                listed(judgements.stream()
                        .map(ContainmentModel::bolt)
                        .sorted(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))),
                "time",
                span(times),
                "lot",
                listed(judgements.stream().map(one -> one.identity().boltLot())),
                "finding",
                listed(judgements.stream()
                        .flatMap(one -> one.findings().stream().limit(1))
                        .map(FindingCode::title)));
    }

    private static String span(List<OffsetDateTime> times) {
        if (times.size() < 2) {
            return times.isEmpty() ? "–" : Times.minutes(times.get(0));
        }
        return Times.span(times.get(0), times.get(times.size() - 1));
    }

    private static String bolt(BriefJudgement judgement) {
        var identity = judgement.identity();
        return identity.bolt() + (identity.attempt() > 1 ? " (attempt " + identity.attempt() + ')' : "");
    }

    private static String listed(Stream<String> words) {
        return words.filter(word -> !word.isEmpty()).distinct().collect(Collectors.joining(", "));
    }
}
