package org.tautlog.report.chart;

import java.awt.Color;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.Range;
import org.tautlog.spc.capability.ShapePlot;
import org.tautlog.spc.capability.SpecLimits;

/**
 * Capability studies in a drawing that stands alone: the values on the paper of the normal distribution, their shares in steps,
 * both with the shape and the limits, and below them the values as they came.
 */
public final class CapabilityChart {
    /** Most groups that are drawn in one file. */
    public static final int MOST_GROUPS = 12;

    private static final int WIDTH = 900;
    private static final int PLOTS_HIGH = 260;
    private static final int STRIP_HIGH = 170;
    private static final int MOST_POINTS = 1000;
    private static final int FILL_ALPHA = 46;
    private static final double TALLEST = 1.34;
    /** Shares beside the axis of scores, with the score of each from tables of the normal distribution. */
    private static final Map<Double, String> SHARES = new TreeMap<>(Map.of(
            -3.0,
            "0.135 %",
            -2.3263,
            "1 %",
            -1.2816,
            "10 %",
            -0.6745,
            "25 %",
            0.0,
            "50 %",
            0.6745,
            "75 %",
            1.2816,
            "90 %",
            2.3263,
            "99 %",
            3.0,
            "99.865 %"));

    private CapabilityChart() {}

    /**
     * One study as it is drawn.
     *
     * @param study what was studied, for the title
     * @param said the study in words, a line each: indices, bounds and the word on control
     * @param spec the limits
     * @param values the values in the order of the file, at least 2
     * @param plot how they lie
     */
    public record Drawn(String study, List<String> said, SpecLimits spec, List<Double> values, ShapePlot plot) {
        public Drawn {
            said = List.copyOf(said);
            values = List.copyOf(values);
        }
    }

    /**
     * Draws studies as SVG.
     *
     * @param value what was studied, for the titles
     * @param unit its unit; empty for none
     * @param groups the study of each group by its name; the first {@link #MOST_GROUPS} are drawn
     * @return an SVG document
     */
    public static String svg(String value, String unit, Map<String, Drawn> groups) {
        return Svg.standing(sheet(value, unit, groups), "Capability of " + value);
    }

    /**
     * Draws studies as PNG, twice as fine as the SVG's own size.
     *
     * @param value what was studied, for the titles
     * @param unit its unit; empty for none
     * @param groups the study of each group by its name; the first {@link #MOST_GROUPS} are drawn
     * @return the bytes of the picture
     */
    public static byte[] png(String value, String unit, Map<String, Drawn> groups) {
        return Png.of(sheet(value, unit, groups));
    }

    private static Sheet sheet(String value, String unit, Map<String, Drawn> groups) {
        var sheet = Sheet.empty(WIDTH);
        for (var group : groups.entrySet().stream().limit(MOST_GROUPS).toList()) {
            var drawn = group.getValue();
            var name = value + (group.getKey().isEmpty() ? "" : ", " + group.getKey()) + ": " + drawn.study();
            var axis = unit.isEmpty() ? value : value + ", " + unit;
            var scale = LimitMarks.scale(drawn);
            sheet = Titles.above(sheet, name, drawn.said())
                    .below(PLOTS_HIGH, probabilities(drawn, axis, scale), shares(drawn, axis, scale))
                    .below(STRIP_HIGH, strip(drawn, axis));
        }
        return sheet;
    }

    private static JFreeChart probabilities(Drawn drawn, String axis, Range scale) {
        double reach = Math.max(3.2, -drawn.plot().ordered().get(0).y() + 0.2);
        var plot = Plots.empty(
                Plots.fineAxis(axis, scale.getLowerBound(), scale.getUpperBound()),
                Plots.axisAt("share up to a value", SHARES, -reach, reach * (2 * TALLEST - 1)));
        var line = Plots.series(0);
        drawn.plot().line().stream()
                .filter(point -> scale.contains(point.x()) && Math.abs(point.y()) <= reach)
                .forEach(point -> line.add(point.x(), point.y()));
        Plots.lines(plot, Plots.only(line), Ink.PEER, 1.6f);
        var ordered = drawn.plot().ordered();
        var dots = Plots.thinned(
                ordered.size(), i -> ordered.get(i).x(), i -> ordered.get(i).y(), MOST_POINTS);
        Plots.points(plot, dots, PointsRenderer.dots(ordered.size() > 300 ? 2.4f : 3.4f, Ink.TRACE));
        LimitMarks.upright(plot, drawn);
        return Plots.chart(plot);
    }

    private static JFreeChart shares(Drawn drawn, String axis, Range scale) {
        var shown = drawn.plot();
        double top = 100
                * Math.max(
                        shown.steps().stream()
                                .mapToDouble(ShapePlot.Point::y)
                                .max()
                                .orElse(1),
                        shown.expected().stream()
                                .mapToDouble(ShapePlot.Point::y)
                                .max()
                                .orElse(0));
        var plot = Plots.empty(
                Plots.fineAxis(axis, scale.getLowerBound(), scale.getUpperBound()),
                Plots.fineAxis("% of the values in each step", 0, top * TALLEST));
        plot.setRangeGridlinesVisible(false);
        steps(plot, shown);
        var line = Plots.series(0);
        shown.expected().stream()
                .filter(point -> scale.contains(point.x()))
                .forEach(point -> line.add(point.x(), 100 * point.y()));
        Plots.lines(plot, Plots.only(line), Ink.TRACE, 1.6f);
        LimitMarks.upright(plot, drawn);
        return Plots.chart(plot);
    }

    private static void steps(XYPlot plot, ShapePlot shown) {
        var window = Ink.WINDOW.colour();
        var fill = new Color(window.getRed(), window.getGreen(), window.getBlue(), FILL_ALPHA);
        var outline = Plots.series(0);
        for (var step : shown.steps()) {
            double left = step.x() - shown.stepWidth() / 2;
            double right = step.x() + shown.stepWidth() / 2;
            double high = 100 * step.y();
            plot.addAnnotation(new XYPolygonAnnotation(
                    new double[] {left, 0, left, high, right, high, right, 0}, null, null, fill));
            outline.add(left, high);
            outline.add(right, high);
        }
        Plots.lines(plot, Plots.only(outline), Ink.WINDOW, 1f);
    }

    private static JFreeChart strip(Drawn drawn, String axis) {
        var values = drawn.values();
        int n = values.size();
        var scale = LimitMarks.scale(drawn);
        var plot = Plots.empty(
                Plots.axisTo(n, "value, in the order of the file", n * (1 + LimitMarks.ROOM) + 1),
                Plots.fineAxis(axis, scale.getLowerBound(), scale.getUpperBound()));
        plot.setRangeGridlinesVisible(false);
        var line = Plots.thinned(n, i -> i + 1.0, values::get, MOST_POINTS);
        Plots.lines(plot, Plots.only(line), Ink.PEER, 0.8f);
        if (n <= MOST_POINTS) {
            Plots.points(plot, line, PointsRenderer.dots(n > 300 ? 2f : 3f, Ink.TRACE));
        }
        LimitMarks.level(plot, drawn, n);
        return Plots.chart(plot);
    }
}
