package org.tautlog.report.chart;

import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.tautlog.review.StreamChart;
import org.tautlog.spc.chart.Chart;

/** One feature of one stream in time order with its control limits; points that break a rule stand out. */
public final class ControlChart {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 190;
    private static final int MOST_POINTS = 300;
    private static final double LABEL_ROOM = 0.13;

    private ControlChart() {}

    /**
     * Draws one.
     *
     * @param chart values, limits and signals
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String svg(StreamChart chart, String id) {
        var values = chart.values();
        var limits = chart.chart().found();
        double low = values.stream().mapToDouble(v -> v).min().orElse(0);
        double high = values.stream().mapToDouble(v -> v).max().orElse(1);
        if (limits.isPresent()) {
            low = Math.min(low, limits.get().points().get(0).lower());
            high = Math.max(high, limits.get().points().get(0).upper());
        }
        double margin = high > low ? 0.08 * (high - low) : Math.max(1e-3, Math.abs(high) * 0.05);
        double n = Math.max(2, values.size());
        var plot = Plots.empty(
                Plots.axis("tightening, in time order", 0, n * (1 + LABEL_ROOM)),
                Plots.axis(chart.feature().title() + ", " + chart.feature().unit(), low - margin, high + margin));
        plot.setRangeGridlinesVisible(false);
        var line = line(values);
        Plots.lines(plot, Plots.only(line), Ink.PEER, 0.8f);
        Plots.dots(plot, Plots.only(line), Ink.TRACE, 2.4f);
        limits.ifPresent(found -> addLimits(plot, found, n));
        return Svg.of(Plots.chart(plot), WIDTH, HEIGHT, id, description(chart));
    }

    private static void addLimits(XYPlot plot, Chart chart, double n) {
        var signals = Plots.series(0);
        chart.signals().stream().limit(MOST_POINTS).forEach(point -> signals.add(point.index() + 1, point.value()));
        if (!signals.isEmpty()) {
            Plots.rings(plot, Plots.only(signals), Ink.SIGNAL);
        }
        var first = chart.points().get(0);
        limit(plot, first.upper(), "upper", n, 4f, 3f);
        limit(plot, first.centre(), "centre", n);
        limit(plot, first.lower(), "lower", n, 4f, 3f);
    }

    private static void limit(XYPlot plot, double value, String name, double n, float... dash) {
        plot.addAnnotation(Plots.line(0, value, n * 1.01, value, Ink.WINDOW, 1f, dash));
        plot.addAnnotation(Plots.text(name, n * 1.02, value, TextAnchor.CENTER_LEFT, Ink.WINDOW));
    }

    /** Of a long series the least and greatest value of each stretch are drawn. */
    private static XYSeries line(List<Double> values) {
        var line = Plots.series(0);
        int n = values.size();
        int stretches = Math.min(n, MOST_POINTS / 2);
        if (n <= MOST_POINTS) {
            IntStream.range(0, n).forEach(i -> line.add(i + 1.0, values.get(i)));
            return line;
        }
        for (int s = 0; s < stretches; s++) {
            int from = (int) ((long) n * s / stretches);
            int to = (int) ((long) n * (s + 1) / stretches);
            int least = from;
            int greatest = from;
            for (int i = from; i < to; i++) {
                least = values.get(i) < values.get(least) ? i : least;
                greatest = values.get(i) > values.get(greatest) ? i : greatest;
            }
            line.add(Math.min(least, greatest) + 1.0, values.get(Math.min(least, greatest)));
            line.add(Math.max(least, greatest) + 1.0, values.get(Math.max(least, greatest)));
        }
        return line;
    }

    private static String description(StreamChart chart) {
        return "Control chart of " + chart.feature().title() + " on "
                + chart.stream().words() + ", " + chart.values().size() + " tightenings, " + chart.signals()
                + " signals";
    }
}
