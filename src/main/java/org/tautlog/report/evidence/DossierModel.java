package org.tautlog.report.evidence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tautlog.archive.KeptDecision;
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
import org.tautlog.review.EngineClampLoad;
import org.tautlog.review.evidence.BoltPosition;
import org.tautlog.review.evidence.EngineDossier;
import org.tautlog.review.evidence.EngineTightening;
import org.tautlog.review.evidence.PositionStanding;
import org.tautlog.review.evidence.Repeat;
import org.tautlog.review.evidence.Said;
import org.tautlog.review.stream.Stream;
import org.tautlog.review.stream.StreamChart;

/** Everything that the dossier's template shows, as words. */
final class DossierModel {
    private static final int LEAST_CHARTED = 3;

    private DossierModel() {}

    static Map<String, Object> of(EngineDossier dossier, Provenance provenance, Evidence evidence) {
        var model = new HashMap<String, Object>();
        model.put("serial", dossier.serial());
        model.put("title", dossier.specification().name());
        model.put("version", dossier.specification().version());
        model.put(
                "span", Times.span(dossier.first().orElse(null), dossier.last().orElse(null)));
        model.put("tightenings", Figures.count(dossier.tightenings().size(), "tightening", "tightenings"));
        model.put("positionCount", Figures.count(dossier.positions().size(), "bolt position", "bolt positions"));
        model.put("safety", SafetyNote.TEXT);
        model.put("sound", DossierAnswers.sound(dossier));
        model.put("unknown", DossierAnswers.unknown(dossier));
        model.put("others", DossierAnswers.others(dossier));
        model.put("plan", JointPlan.of(dossier));
        model.put("decided", !dossier.standing(PositionStanding.DECIDED).isEmpty());
        model.put("load", dossier.clampLoad().map(DossierModel::load).orElse(""));
        model.put(
                "positions",
                dossier.positions().stream().map(DossierModel::position).toList());
        model.put(
                "listed",
                dossier.tightenings().stream()
                        .flatMap(one -> one.drawn().stream())
                        .map(listed ->
                                ListedModel.of(listed, dossier.specification().window(), new ShiftClock(true)))
                        .toList());
        model.put("repeats", repeats(dossier));
        model.put(
                "decisions",
                dossier.decisions().stream().map(DossierModel::decision).toList());
        model.put("charts", charts(dossier));
        model.put("leastCharted", LEAST_CHARTED);
        model.put("uncharted", uncharted(dossier));
        model.put(
                "sources",
                dossier.tightenings().stream().map(DossierModel::source).toList());
        model.put("hours", dossier.surroundings().hours());
        model.put("archive", provenance.specificationFile());
        model.put("evidence", Map.of("file", evidence.file(), "sha256", evidence.sha256()));
        model.put("program", provenance.programVersion());
        model.put("written", Times.minutes(provenance.writtenAt()));
        return model;
    }

    private static String load(EngineClampLoad load) {
        return "Lowest " + Figures.of(load.lowestKN(), 1) + " kN at bolt " + load.lowestBolt() + ", mean "
                + Figures.of(load.meanKN(), 1) + " kN, spread " + Figures.of(load.spreadKN(), 1)
                + " kN from lowest to highest, as tightened, over "
                + Figures.count(load.bolts(), "bolt position", "bolt positions") + ".";
    }

    private static Map<String, Object> position(BoltPosition position) {
        return Map.of(
                "bolt", position.bolt().isEmpty() ? "–" : position.bolt(),
                "station", position.station(),
                "mark", JointPlan.mark(position.standing()),
                "word", position.standing().word(),
                "attempts",
                        position.attempts().stream().map(DossierModel::attempt).toList());
    }

    private static Map<String, Object> attempt(EngineTightening one) {
        var judgement = one.judgement();
        var identity = judgement.identity();
        var time = identity.time();
        return Map.of(
                "rank", one.drawn().map(listed -> "" + listed.rank()).orElse(""),
                "attempt", identity.attempt(),
                "stream", new Stream(identity.station(), identity.spindle()).words(),
                "time", time == null ? "–" : Times.minutes(time),
                "lot", identity.boltLot(),
                "verdict", judgement.verdict().word(),
                "said", one.said().stream().map(DossierModel::said).distinct().collect(Collectors.joining("; ")),
                "headline",
                        judgement.findings().isEmpty()
                                ? ""
                                : ListedModel.title(judgement.findings().get(0)));
    }

    private static String said(Said said) {
        return said.version() + ": " + said.verdict().word();
    }

    private static List<String> repeats(EngineDossier dossier) {
        var sentences = new ArrayList<String>();
        for (var position : dossier.positions()) {
            for (Repeat repeat : position.repeats()) {
                sentences.add(DossierAnswers.sentence(position, repeat));
            }
        }
        return sentences;
    }

    private static Map<String, Object> decision(KeptDecision kept) {
        var decision = kept.decision();
        return Map.of(
                "entry", kept.entry(),
                "time", Times.minutes(kept.time()),
                "subject", decision.bolt().isEmpty() ? "whole engine" : "bolt " + decision.bolt(),
                "action", decision.action().word(),
                "by", decision.by(),
                "reason", decision.reason(),
                "stands", kept.standing() ? "stands" : "superseded",
                "sha256", kept.sha256());
    }

    private static List<Map<String, Object>> charts(EngineDossier dossier) {
        var shown = dossier.charts().stream()
                .filter(chart -> chart.values().size() >= LEAST_CHARTED)
                .toList();
        var byStream = shown.stream()
                .collect(Collectors.groupingBy(StreamChart::stream, LinkedHashMap::new, Collectors.toList()));
        var groups = new ArrayList<Map<String, Object>>();
        byStream.forEach((stream, charts) -> groups.add(Map.of(
                "stream",
                stream.words(),
                "charts",
                charts.stream()
                        .map(chart -> chart(
                                chart,
                                ControlScale.of(chart, shown),
                                dossier.serial(),
                                "c" + groups.size() + '-' + chart.feature().name()))
                        .toList())));
        return groups;
    }

    /** Which charts are left out as too short to say anything, and why. */
    private static String uncharted(EngineDossier dossier) {
        var few = dossier.charts().stream()
                .filter(chart -> !chart.values().isEmpty() && chart.values().size() < LEAST_CHARTED)
                .collect(Collectors.groupingBy(
                        chart -> chart.stream().words(),
                        LinkedHashMap::new,
                        Collectors.mapping(
                                chart -> chart.feature().title() + " (n = "
                                        + chart.values().size() + ')',
                                Collectors.joining(", "))));
        return few.entrySet().stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getValue,
                        LinkedHashMap::new,
                        Collectors.mapping(Map.Entry::getKey, Collectors.joining(", "))))
                .entrySet()
                .stream()
                .map(entry -> entry.getKey() + " of " + entry.getValue())
                .collect(Collectors.joining("; "));
    }

    private static Map<String, Object> chart(StreamChart chart, ControlScale scale, String serial, String id) {
        var why = chart.chart().whyMissing().orElse("");
        return Map.of(
                "title", Sentence.capital(chart.feature().title()),
                "unit", chart.feature().unit(),
                "n", chart.values().size(),
                "signals", chart.signals().size(),
                "basis",
                        (why.isEmpty() ? chart.basis() : "no limits: " + why)
                                + (scale.common() ? "" : "; far from the station's others, on a scale of its own"),
                "svg", ControlChart.svg(chart, scale, id, serial));
    }

    private static Map<String, Object> source(EngineTightening one) {
        var judgement = one.judgement();
        var last = one.standing();
        return Map.of(
                "bolt", judgement.identity().bolt(),
                "attempt", judgement.identity().attempt(),
                "file", judgement.source().file(),
                "line", judgement.source().line(),
                "sha256", judgement.source().sha256(),
                "specification", last.specification() + ", version " + last.version(),
                "specificationSha256", last.specificationSha256(),
                "program", last.program(),
                "row", last.rowSha256());
    }
}
