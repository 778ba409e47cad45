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
        double high =
                engines.stream().mapToDouble(EngineClampLoad::meanKN).max().orElse(1);
        double margin = Math.max(0.5, 0.05 * (high - low));
        var plot = Plots.empty(
                Plots.axis("estimated clamp load, kN", low - margin, high + margin),
                Plots.axis("engines at or below, %", 0, 108));
        add(plot, sorted(engines, EngineClampLoad::lowestKN), Ink.SIGNAL, "lowest bolt", TextAnchor.BOTTOM_RIGHT);
        add(plot, sorted(engines, EngineClampLoad::meanKN), Ink.WINDOW, "mean", TextAnchor.TOP_LEFT);
        return Svg.of(
                Plots.chart(plot),
                WIDTH,
                HEIGHT,
                id,
                String.format(Locale.ROOT, "Clamp loads of %d engines, lowest bolt and mean", engines.size()));
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
        plot.addAnnotation(Plots.text(name + "  ", sorted.get((int) (0.6 * (n - 1))), 62, anchor, ink));
    }
}
