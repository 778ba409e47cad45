package org.tautlog.report.chart;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.ui.TextAnchor;
import org.tautlog.review.EngineClampLoad;

/** Estimated clamp loads of all engines: the share of engines at or below a load, for each engine's lowest bolt and its mean. */
public final class ClampLoadChart {
    private static final int WIDTH = 560;
    private static final int HEIGHT = 240;
    private static final int MOST_STEPS = 300;
    /** Width of the right-hand label, as a share of the scale. */
    private static final double LABEL_ROOM = 0.16;

    private ClampLoadChart() {}

    /**
     * Draws one.
     *
     * @param engines the engines, at least 1
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String svg(List<EngineClampLoad> engines, String id) {
        double low =
                engines.stream().mapToDouble(EngineClampLoad::lowestKN).min().orElse(0);
        var means = sorted(engines, EngineClampLoad::meanKN);
        double high = means.get(means.size() - 1);
        double margin = Math.max(0.5, 0.05 * (high - low));
        double labelled = labelled(means) + LABEL_ROOM * (high - low + 2 * margin);
        var plot = Plots.empty(
                Plots.axis("estimated clamp load, kN", low - margin, Math.max(high + margin, labelled)),
                Plots.axis("engines at or below, %", 0, 108));
        add(plot, sorted(engines, EngineClampLoad::lowestKN), Ink.SIGNAL, "lowest bolt", TextAnchor.BOTTOM_RIGHT);
        add(plot, means, Ink.WINDOW, "mean", TextAnchor.TOP_LEFT);
        return Svg.of(
                Plots.chart(plot),
                WIDTH,
                HEIGHT,
                id,
                String.format(Locale.ROOT, "Clamp loads of %d engines, lowest bolt and mean", engines.size()));
    }

    /** Load beside which a line's name stands. */
    private static double labelled(List<Double> sorted) {
        return sorted.get((int) (0.6 * (sorted.size() - 1)));
    }

    private static List<Double> sorted(List<EngineClampLoad> engines, ToDoubleFunction<EngineClampLoad> load) {
        return engines.stream().mapToDouble(load).sorted().boxed().toList();
    }

    private static void add(
            org.jfree.chart.plot.XYPlot plot, List<Double> sorted, Ink ink, String name, TextAnchor anchor) {
        var line = Plots.series(0);
        int n = sorted.size();
        line.add(sorted.get(0).doubleValue(), 0);
        for (int i = 0; i < n; i += Math.max(1, n / MOST_STEPS)) {
            line.add(sorted.get(i).doubleValue(), 100.0 * i / n);
            line.add(sorted.get(i).doubleValue(), 100.0 * (i + 1) / n);
        }
        line.add(sorted.get(n - 1).doubleValue(), 100);
        Plots.lines(plot, Plots.only(line), ink, 1.6f);
        plot.addAnnotation(Plots.text("  " + name + "  ", labelled(sorted), 62, anchor, ink));
    }
}
