package org.tautlog.report.chart;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.tautlog.joint.study.Envelope;

/** The same drawn bolts before and after their first warm-up: the share of bolts at or below a clamp load. */
public final class BeforeAfterChart {
    private static final int WIDTH = 480;
    private static final int HEIGHT = 320;
    private static final int MOST_STEPS = 200;
    private static final double N_PER_KN = 1000;
    private static final double MARGIN = 0.06;

    private BeforeAfterChart() {}

    /**
     * Draws it.
     *
     * @param envelope the bolts drawn
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String svg(Envelope envelope, String id) {
        var before = sorted(envelope, Envelope.Pair::tightenedN);
        var after = sorted(envelope, Envelope.Pair::coldAfterN);
        int last = before.size() - 1;
        double low = Math.min(before.get(0), after.get(0));
        double high = Math.max(before.get(last), after.get(last));
        double room = Math.max(high - low, 0.1) * MARGIN;
        var plot = Plots.empty(
                Plots.axis("clamp load, kN", low - room, high + room), Plots.axis("bolts at or below, %", 0, 106));
        add(plot, after, Ink.SIGNAL, " cold after the first warm-up", 0.9, TextAnchor.BOTTOM_RIGHT);
        add(plot, before, Ink.WINDOW, " as tightened", 0.1, TextAnchor.TOP_LEFT);
        return Svg.of(
                Plots.chart(plot),
                WIDTH,
                HEIGHT,
                id,
                "Clamp load of " + before.size() + " drawn bolts as tightened and cold after the first warm-up");
    }

    private static List<Double> sorted(Envelope envelope, ToDoubleFunction<Envelope.Pair> loadN) {
        return envelope.pairs().stream()
                .mapToDouble(loadN)
                .map(n -> n / N_PER_KN)
                .sorted()
                .boxed()
                .toList();
    }

    private static void add(XYPlot plot, List<Double> sorted, Ink ink, String name, double at, TextAnchor anchor) {
        var line = Plots.series(0);
        int n = sorted.size();
        for (int i = 0; i < n; i += Math.max(1, n / MOST_STEPS)) {
            line.add(sorted.get(i).doubleValue(), 100.0 * (i + 1) / n);
        }
        line.add(sorted.get(n - 1).doubleValue(), 100);
        Plots.lines(plot, Plots.only(line), ink, 1.8f);
        plot.addAnnotation(Plots.text(name + ' ', sorted.get((int) (at * (n - 1))), 100 * at, anchor, ink));
    }
}
