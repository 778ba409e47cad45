package org.tautlog.report.judged;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.joint.window.Window;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.report.chart.TraceChart;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.ShiftClock;
import org.tautlog.report.words.Times;
import org.tautlog.review.Listed;

/** What the page shows of one listed tightening. */
public final class ListedModel {
    private static final int SHORT_HASH = 12;

    private static final Pattern HYPHEN_AS_MINUS = Pattern.compile("(?<=^|[ (])-(?=\\d)");

    private ListedModel() {}

    /**
     * {@return the words and drawings of a tightening, by the names that the templates use}
     *
     * @param listed the tightening among its peers
     * @param window the limits that it is held against
     * @param clock how the report tells times
     */
    public static Map<String, Object> of(Listed listed, Window window, ShiftClock clock) {
        var judgement = listed.judgement();
        var identity = judgement.identity();
        var time = identity.time();
        return Map.ofEntries(
                Map.entry("rank", listed.rank()),
                Map.entry("serial", identity.serial()),
                Map.entry("bolt", identity.bolt().isEmpty() ? "–" : identity.bolt()),
                Map.entry("stream", listed.stream().words()),
                Map.entry("attempt", identity.attempt()),
                Map.entry("time", time == null ? "–" : Times.minutes(time)),
                Map.entry("clock", clock.words(time)),
                Map.entry("lot", identity.boltLot()),
                Map.entry("verdict", judgement.verdict().word()),
                Map.entry("headline", headline(judgement)),
                Map.entry("findings", findings(judgement)),
                Map.entry("figures", figures(judgement, window)),
                Map.entry("peers", listed.peers().size()),
                Map.entry("chart", TraceChart.svg(listed, window, "trace" + listed.rank())),
                Map.entry("shape", ShapeWords.sentence(listed)),
                Map.entry("shapeChart", ShapeWords.chart(listed, "shape-of" + listed.rank())),
                Map.entry("source", source(judgement)));
    }

    private static String headline(Judgement judgement) {
        return judgement.findings().isEmpty()
                ? "no finding"
                : title(judgement.findings().get(0));
    }

    /**
     * What was found, in a few words: too few samples for a feature are a recording's fault; a feature too close to its limit
     * to tell is none.
     *
     * @param finding what was found
     * @return its title
     */
    public static String title(Finding finding) {
        return finding.code() == FindingCode.TOO_FEW_SAMPLES && !finding.unit().equals("samples")
                ? "within the measuring uncertainty of the limit"
                : finding.code().title();
    }

    /**
     * {@return what a finding says, its numbers with a true minus sign}
     *
     * @param finding what was found
     */
    public static String message(Finding finding) {
        return HYPHEN_AS_MINUS.matcher(finding.message()).replaceAll("−");
    }

    private static List<Map<String, Object>> findings(Judgement judgement) {
        return judgement.findings().stream()
                .map(finding -> Map.<String, Object>of(
                        "title", Sentence.capital(title(finding)),
                        "severity", finding.severity().word(),
                        "differs",
                                !finding.severity()
                                        .word()
                                        .equals(judgement.verdict().word()),
                        "message", Sentence.of(message(finding))))
                .toList();
    }

    private static List<Map<String, Object>> figures(Judgement judgement, Window window) {
        var signature = judgement.signature();
        var rows = new ArrayList<Map<String, Object>>();
        rows.add(row(
                "snug torque",
                "N·m",
                Figures.of(signature.snug().torqueNm(), window.snugTorqueNm(), 1),
                Figures.of(window.snugTorqueNm(), 1)));
        rows.add(row(
                "turn past snug",
                "deg",
                Figures.of(signature.end().turnDeg(), window.turnDeg(), 1),
                Figures.of(window.turnDeg(), 1)));
        rows.add(row(
                "final torque",
                "N·m",
                Figures.of(signature.end().torqueNm(), window.finalTorqueNm(), 1),
                Figures.of(window.finalTorqueNm(), 1)));
        rows.add(row(
                "torque rate",
                "N·m/deg",
                Figures.of(signature.elastic().torqueRateNmPerDeg(), window.torqueRateNmPerDeg(), 4),
                Figures.of(window.torqueRateNmPerDeg(), 4)));
        rows.add(row("yield onset", "N·m", Figures.of(signature.onset().torqueNm(), 1), ""));
        rows.add(row(
                "gradient ratio at the stop",
                "",
                Figures.of(signature.onset().finalGradientRatio(), gradientRatio(window), 2),
                Figures.of(gradientRatio(window), 2)));
        var load = signature.clampLoad();
        if (load.loadKN().isFound()) {
            rows.add(row(
                    "clamp load, estimated",
                    "kN",
                    Figures.of(load.loadKN(), 1),
                    "within " + Figures.of(load.lowKN(), 1) + " to " + Figures.of(load.highKN(), 1)));
        } else if (judgement.findings().stream()
                .anyMatch(finding -> finding.message().endsWith(load.loadKN().whyMissing()))) {
            rows.add(row("clamp load, estimated", "kN", "–", "no estimate; a finding says why"));
        }
        rows.add(row("state at the end", "", signature.onset().endState().word().replace('-', ' '), ""));
        return rows;
    }

    private static Band gradientRatio(Window window) {
        double least = window.onset().leastFinalGradientRatio();
        return least > 0 ? new Band(least, Double.POSITIVE_INFINITY) : Band.open();
    }

    private static Map<String, Object> row(String name, String unit, String value, String limits) {
        return Map.of("name", name, "unit", unit, "value", value, "limits", limits);
    }

    private static String source(Judgement judgement) {
        var source = judgement.source();
        var hash = source.sha256();
        return source.file() + ", line " + source.line()
                + (hash.isEmpty() ? "" : ", sha-256 " + hash.substring(0, Math.min(SHORT_HASH, hash.length())) + '…');
    }
}
