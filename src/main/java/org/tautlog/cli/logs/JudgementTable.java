package org.tautlog.cli.logs;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.Collectors;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.joint.window.Consequence;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.Gravity;
import org.tautlog.review.VerdictCounts;
import org.tautlog.review.stream.Stream;
import org.tautlog.signature.Feature;
import picocli.CommandLine.Help.Ansi;

/**
 * Judgements as a table for a terminal: worst first, findings in words below each row, the sum at the end, where a reader
 * of a terminal looks first. It keeps the worst ones only, unless all are asked for.
 */
final class JudgementTable {
    private static final int MOST_ROWS = 40;
    private static final int FEW = 16;
    private static final List<String> HEADS = List.of(
            "verdict",
            "engine",
            "bolt",
            "spindle",
            "attempt",
            "turn deg",
            "final N·m",
            "rate N·m/deg",
            "clamp kN est.",
            "end state");
    private static final int FIRST_NUMBER = 4;
    private static final int LAST_NUMBER = 8;

    private final boolean all;
    private final Ansi ansi;
    private final PriorityQueue<Judgement> worst = new PriorityQueue<>(Gravity.WORST_FIRST.reversed());
    private final Set<String> engines = new HashSet<>();
    private VerdictCounts counts = VerdictCounts.none();

    JudgementTable(boolean all, Ansi ansi) {
        this.all = all;
        this.ansi = ansi;
    }

    void count(Judgement judgement) {
        counts = counts.plus(judgement.verdict());
    }

    void keep(Judgement judgement) {
        engines.add(judgement.identity().serial());
        worst.add(judgement);
        if (!all && worst.size() > MOST_ROWS) {
            worst.remove();
        }
    }

    VerdictCounts counts() {
        return counts;
    }

    String text(JudgingRequest request) {
        boolean every = all || counts.total() <= FEW;
        var shown = worst.stream()
                .filter(judgement -> every || judgement.verdict() != Verdict.CONFORMING)
                .sorted(Gravity.WORST_FIRST)
                .toList();
        var text = new StringBuilder();
        if (!shown.isEmpty()) {
            append(shown, text);
            text.append(System.lineSeparator());
        }
        int left = counts.needingAPerson()
                - (int) shown.stream()
                        .filter(judgement -> judgement.verdict() != Verdict.CONFORMING)
                        .count();
        if (left > 0) {
            text.append(left).append(" more need a person; --all shows them").append(System.lineSeparator());
        }
        return text.append(counts.total())
                .append(counts.total() == 1 ? " tightening on " : " tightenings on ")
                .append(engines.size())
                .append(engines.size() == 1 ? " engine: " : " engines: ")
                .append(List.of(Verdict.NONCONFORMING, Verdict.UNJUDGED, Verdict.REVIEW, Verdict.CONFORMING).stream()
                        .map(verdict -> counts.of(verdict) + " " + verdict.word())
                        .collect(Collectors.joining(", ")))
                .append(System.lineSeparator())
                .append("judged by ")
                .append(Terminal.harmless(request.specification().name()))
                .append(", version ")
                .append(Terminal.harmless(request.specification().version()))
                .append(" (")
                .append(request.specificationFile())
                .append(')')
                .append(System.lineSeparator())
                .toString();
    }

    private void append(List<Judgement> shown, StringBuilder text) {
        var columns = new Columns(HEADS, FIRST_NUMBER, LAST_NUMBER);
        shown.forEach(judgement -> columns.fit(cells(judgement)));
        text.append(columns.line(HEADS)).append(System.lineSeparator());
        for (var judgement : shown) {
            var cells = cells(judgement);
            var rest = columns.line(cells).substring(columns.width(0));
            text.append(Terminal.verdict(judgement.verdict(), columns.width(0), ansi))
                    .append(rest)
                    .append(System.lineSeparator());
            findings(judgement, columns.width(0) + Columns.GAP, text);
        }
    }

    private static void findings(Judgement judgement, int indent, StringBuilder text) {
        judgement.findings().stream()
                .filter(finding -> finding.severity() != Consequence.NOTE)
                .sorted(Comparator.comparing(finding -> finding.severity().compareTo(Consequence.NONCONFORMING) < 0))
                .forEach(finding -> text.append(" ".repeat(indent))
                        .append(finding.code().word())
                        .append(": ")
                        .append(Terminal.harmless(finding.message()))
                        .append(System.lineSeparator()));
    }

    private static List<String> cells(Judgement judgement) {
        var identity = judgement.identity();
        var signature = judgement.signature();
        return List.of(
                Terminal.verdict(judgement.verdict(), 0, Ansi.OFF),
                Terminal.harmless(identity.serial()),
                Terminal.harmless(identity.bolt()),
                Terminal.harmless(new Stream(identity.station(), identity.spindle()).words()),
                Integer.toString(identity.attempt()),
                number(signature.end().turnDeg(), "%.1f"),
                number(signature.end().torqueNm(), "%.1f"),
                number(signature.elastic().torqueRateNmPerDeg(), "%.4f"),
                number(signature.clampLoad().loadKN(), "%.1f"),
                signature.onset().endState().word());
    }

    private static String number(Feature feature, String format) {
        return feature.isFound() ? String.format(Locale.ROOT, format, feature.number()) : "-";
    }
}
