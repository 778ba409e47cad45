package org.tautlog.accuracy;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tautlog.accuracy.FaultStudy.Good;
import org.tautlog.accuracy.FaultStudy.Graded;
import org.tautlog.trace.Curve;

/** The page of the fault study: what was found, what it was called, and a drawing of each fault. */
final class FaultPage {
    private static final int WIDTH = 300;
    private static final int HEIGHT = 150;
    private static final double MOST_NM = 100;

    private FaultPage() {}

    static String of(List<Graded> graded, List<Good> good) {
        var text = new StringBuilder();
        text.append("""
                <!DOCTYPE html>
                <html lang="en"><head><meta charset="utf-8"><title>Fault signatures</title>
                <style>
                body { font: 14px/1.4 sans-serif; max-width: 1000px; margin: 2em auto; color: #222; padding: 0 1em; }
                table { border-collapse: collapse; margin: 1em 0; } td, th { padding: .2em .6em; text-align: left; }
                tr { border-bottom: 1px solid #ddd; } .n { text-align: right; font-variant-numeric: tabular-nums; }
                .grid { display: grid; grid-template-columns: repeat(3, 1fr); gap: 1.2em; }
                .grid figure { margin: 0; } figcaption { font-size: 12px; } svg { width: 100%; background: #fafafa; }
                .sizes td:nth-child(5) { white-space: nowrap; }
                .wide { overflow-x: auto; } .matrix { font-size: 11px; } .matrix th, .matrix td { padding: .15em .2em; }
                .matrix tr:first-child th { vertical-align: bottom; } .matrix span { writing-mode: vertical-rl; transform: rotate(180deg); white-space: nowrap; }
                .matrix tr + tr th { font-weight: normal; min-width: 14em; } .matrix td.n { background: #e4ecf2; }
                b.short { color: #a40; } code { font-size: 12px; }
                </style></head><body>
                <h1>Fault signatures on simulated faults of graded size</h1>
                <p>Each fault is placed in ordinary tightenings of a made joint (half of them sampled by time, a third without stage
                marks) and judged under default fault rules. <i>Found</i>: the tightening does not pass and carries the fault's own code.
                <i>Called so</i>: that code stands first. Low friction stands behind the low torque that comes of it, which is graver.
                Intervals: Clopper and Pearson, 95 %. <code>mvn -Dquick test -Dtest=FaultStudy</code> writes this page and
                <code>faults.csv</code> again. Torque-angle analysis supports and never replaces the plant's released specification.</p>
                <h2>False alarms</h2>
                <table><tr><th>good tightenings</th><th class="n">n</th><th class="n">not conforming</th><th>share (interval)</th>
                <th>called</th></tr>
                """);
        for (var row : good) {
            text.append(String.format(
                    Locale.ROOT,
                    "<tr><td>%s</td><td class=\"n\">%d</td><td class=\"n\">%d</td><td>%s</td><td>%s</td></tr>%n",
                    row.name(),
                    row.alarms().n(),
                    row.alarms().hits(),
                    row.alarms().words(),
                    words(row.codes())));
        }
        text.append(
                "</table>\n<h2>Found, by size</h2>\n<table class=\"sizes\"><tr><th>fault</th><th class=\"n\">size</th><th>unit</th>");
        text.append("<th class=\"n\">n</th><th>found (interval)</th><th>called so</th><th>not passed</th></tr>\n");
        for (var row : graded) {
            boolean matters = row.size() == row.fault().matters();
            boolean enough = !matters || row.found().value() >= 0.98;
            text.append(String.format(
                    Locale.ROOT,
                    "<tr><td>%s</td><td class=\"n\">%s%s%s</td><td>%s</td><td class=\"n\">%d</td><td>%s%s%s</td><td"
                            + " class=\"n\">%.1f %%</td><td class=\"n\">%.1f %%</td></tr>%n",
                    row.fault().name(),
                    matters ? "<b>" : "",
                    number(row.size()),
                    matters ? "</b>" : "",
                    row.fault().unit(),
                    row.found().n(),
                    enough ? "" : "<b class=\"short\">",
                    row.found().words(),
                    enough ? "" : "</b> below 98 %",
                    100 * row.called().value(),
                    100 * row.alarmed().value()));
        }
        text.append("</table>\n<p>Bold: the size that matters.</p>\n");
        matrix(text, graded, good);
        text.append(
                "<h2>What each looks like</h2>\n<p>Grey: a good tightening; black: the fault at the size that matters.");
        text.append(" Angle to the right, torque up to 100 N·m.</p>\n<div class=\"grid\">\n");
        for (var fault : Faults.all()) {
            text.append("<figure><svg viewBox=\"0 0 ")
                    .append(WIDTH)
                    .append(' ')
                    .append(HEIGHT)
                    .append("\">");
            var faulty = fault.curve(1, fault.matters());
            var usual = Faults.ordinary(1).make();
            double most = Math.max(greatest(faulty), greatest(usual));
            line(text, usual, most, "#bbb");
            line(text, faulty, most, "#111");
            text.append("</svg><figcaption><b>").append(fault.name()).append("</b>, ");
            text.append(number(fault.matters()))
                    .append(' ')
                    .append(fault.unit())
                    .append(".<br>");
            text.append(fault.codes().stream()
                    .map(code -> "<code>" + code.word() + "</code>")
                    .collect(Collectors.joining(", ")));
            text.append(": ").append(fault.rule().replaceAll("`([^`]*)`", "<code>$1</code>"));
            text.append(".</figcaption></figure>\n");
        }
        return text.append("</div>\n</body></html>\n").toString();
    }

    /** Rows: what the tightening had; columns: what it was called first. Columns stand in the order in which rows need them. */
    private static void matrix(StringBuilder text, List<Graded> graded, List<Good> good) {
        var rows = new LinkedHashMap<String, Map<String, Integer>>();
        graded.stream()
                .filter(row -> row.size() == row.fault().matters())
                .forEach(row ->
                        rows.put(row.fault().name() + ", n = " + row.found().n(), row.first()));
        good.forEach(row -> rows.put(row.name() + ", n = " + row.alarms().n(), calls(row)));
        var codes = new LinkedHashSet<String>();
        rows.values()
                .forEach(first -> first.entrySet().stream()
                        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                        .forEach(entry -> codes.add(entry.getKey())));
        text.append(
                "<h2>Confusion matrix</h2>\n<p>What each was called first, in tightenings; faults at the size that matters.");
        text.append(" Empty: none.</p>\n<div class=\"wide\"><table class=\"matrix\"><tr><th>had</th>");
        codes.forEach(code -> text.append("<th><span>").append(code).append("</span></th>"));
        text.append("</tr>\n");
        rows.forEach((name, first) -> {
            text.append("<tr><th>").append(name).append("</th>");
            codes.forEach(code -> {
                int times = first.getOrDefault(code, 0);
                text.append(times == 0 ? "<td></td>" : "<td class=\"n\">" + times + "</td>");
            });
            text.append("</tr>\n");
        });
        text.append("</table></div>\n");
    }

    private static Map<String, Integer> calls(Good row) {
        var calls = new TreeMap<>(row.codes());
        calls.put("conforming", row.alarms().n() - row.alarms().hits());
        return calls;
    }

    private static double greatest(Curve curve) {
        double most = 0;
        for (int i = 0; i < curve.size(); i++) {
            most = Math.max(most, curve.angleDeg(i));
        }
        return most;
    }

    private static void line(StringBuilder text, Curve curve, double mostDeg, String colour) {
        text.append("<polyline fill=\"none\" stroke=\"").append(colour).append("\" points=\"");
        int step = Math.max(1, curve.size() / 900);
        for (int i = 0; i < curve.size(); i += step) {
            text.append(String.format(
                    Locale.ROOT,
                    "%.1f,%.1f ",
                    WIDTH * curve.angleDeg(i) / mostDeg,
                    HEIGHT - 2 - (HEIGHT - 4) * Math.max(0, curve.torqueNm(i)) / MOST_NM));
        }
        text.append("\"/>");
    }

    private static String words(Map<String, Integer> codes) {
        return codes.entrySet().stream()
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .collect(Collectors.joining(", "));
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
