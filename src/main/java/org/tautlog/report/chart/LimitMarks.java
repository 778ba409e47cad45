package org.tautlog.report.chart;

import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.tautlog.spc.Digits;

/** The limits of a capability study and its reference interval, each with its name, in plots whose axis is the value. */
final class LimitMarks {
    /** Room for words right of the last value, as a share of the values. */
    static final double ROOM = 0.2;
    /** A limit further out than this many widths of the values stands at the edge and not in the scale. */
    private static final double FURTHEST = 1.5;

    private static final double MARGIN = 0.08;
    /** Width of a character, as a share of the scale. */
    private static final double CHARACTER = 0.02;

    private LimitMarks() {}

    /** Values, reference interval, and limits that are not far out. */
    static Range scale(CapabilityChart.Drawn drawn) {
        var ordered = drawn.plot().ordered();
        double low = ordered.get(0).x();
        double high = ordered.get(ordered.size() - 1).x();
        double own = high - low;
        var reference = drawn.plot().reference();
        if (reference != null) {
            low = Math.min(low, Math.max(reference.lower(), low - own));
            high = Math.max(high, Math.min(reference.upper(), high + own));
        }
        double reach = FURTHEST * (high - low);
        double from = low;
        double to = high;
        var lower = drawn.spec().lower();
        var upper = drawn.spec().upper();
        if (lower != null && lower > low - reach) {
            from = Math.min(from, lower);
        }
        if (upper != null && upper < high + reach) {
            to = Math.max(to, upper);
        }
        double margin = MARGIN * (to - from);
        return new Range(from - margin, to + margin);
    }

    /** Upright lines: the limits with their names on top, the reference interval a line lower. */
    static void upright(XYPlot plot, CapabilityChart.Drawn drawn) {
        var up = plot.getRangeAxis().getRange();
        double line = up.getLength() * 0.075;
        double top = up.getUpperBound() - line / 2;
        double foot = up.getLowerBound();
        var spec = drawn.spec();
        double spread = plot.getDomainAxis().getRange().getLength();
        if (spec.lower() != null) {
            mark(plot, spec.lower(), "low " + Digits.whole(spec.lower()), foot, top, Ink.SIGNAL, 1.6f);
        }
        if (spec.upper() != null) {
            mark(plot, spec.upper(), "high " + Digits.whole(spec.upper()), foot, top, Ink.SIGNAL, 1.6f);
        }
        var reference = drawn.plot().reference();
        if (reference != null) {
            double second = top - line;
            double third = second - line;
            var low = "0.135 %: " + Digits.of(reference.lower(), spread);
            var high = "99.865 %: " + Digits.of(reference.upper(), spread);
            mark(plot, reference.lower(), low, foot, second, Ink.WINDOW, 1.1f, 4f, 3f);
            mark(plot, reference.upper(), high, foot, third, Ink.WINDOW, 1.1f, 4f, 3f);
        }
    }

    private static void mark(
            XYPlot plot, double at, String words, double foot, double height, Ink ink, float width, float... dash) {
        var across = plot.getDomainAxis().getRange();
        if (!across.contains(at)) {
            boolean left = at < across.getLowerBound();
            double edge = left ? across.getLowerBound() : across.getUpperBound();
            plot.addAnnotation(Plots.text(
                    left ? " ← " + words : words + " → ",
                    edge,
                    height,
                    left ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT,
                    ink));
            return;
        }
        plot.addAnnotation(Plots.line(at, foot, at, height, ink, width, dash));
        boolean left = at < across.getCentralValue();
        double room = left ? at - across.getLowerBound() : across.getUpperBound() - at;
        boolean outward = room > CHARACTER * words.length() * across.getLength();
        boolean rightward = left != outward;
        plot.addAnnotation(Plots.text(
                rightward ? " " + words : words + " ",
                at,
                height,
                rightward ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT,
                ink));
    }

    /** Level lines of the limits with their names right of the last value. */
    static void level(XYPlot plot, CapabilityChart.Drawn drawn, int n) {
        var spec = drawn.spec();
        if (spec.lower() != null) {
            level(plot, spec.lower(), "low", n);
        }
        if (spec.upper() != null) {
            level(plot, spec.upper(), "high", n);
        }
    }

    private static void level(XYPlot plot, double at, String name, int n) {
        var up = plot.getRangeAxis().getRange();
        boolean inside = up.contains(at);
        if (inside) {
            plot.addAnnotation(Plots.line(0.5, at, n + 0.5, at, Ink.SIGNAL, 1.6f));
        }
        double height = up.constrain(at);
        plot.addAnnotation(Plots.text(
                name + " " + Digits.whole(at) + (inside ? "" : at > height ? " ↑" : " ↓"),
                n + 0.6 + n * 0.01,
                height,
                inside ? TextAnchor.CENTER_LEFT : at > height ? TextAnchor.TOP_LEFT : TextAnchor.BOTTOM_LEFT,
                Ink.SIGNAL));
    }
}
