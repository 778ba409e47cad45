package org.tautlog.report.chart;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartKind;
import org.tautlog.spc.chart.ChartPoint;
import org.tautlog.spc.study.PanelLine;
import org.tautlog.spc.study.SeriesStudy;
import org.tautlog.spc.study.StudyKind;
import org.tautlog.spc.study.StudyPanel;

/** The panels of control charts below each other in one drawing that stands alone: titles, limits and signals in words. */
public final class SeriesChart {
    /** Most groups that are drawn in one file. */
    public static final int MOST_GROUPS = 24;

    private static final int WIDTH = 900;
    private static final int HEIGHT = 250;
    static final int MOST_POINTS = 2000;
    private static final int MOST_DOTS = 1000;
    /** Labels of limits nearer than this share of the scale would lie on each other. */
    private static final double LEAST_APART = 0.07;

    private static final int MOST_NAMES = 12;
    private static final int FEW_LINES = 3;
    private static final double MARGIN = 0.04;
    /** Where the names of lines begin, right of the words of limits, and what a character of them takes. */
    private static final double NAMES_FROM = 0.16;

    private static final double CHARACTER_ROOM = 0.012;
    private static final double MOST_ROOM = 0.5;

    private SeriesChart() {}

    /**
     * Draws charts as SVG.
     *
     * @param value what was charted, for the titles
     * @param unit its unit; empty for none
     * @param groups the study of each group by its name; the first {@link #MOST_GROUPS} are drawn
     * @return an SVG document
     */
    public static String svg(String value, String unit, Map<String, SeriesStudy> groups) {
        return Svg.standing(sheet(value, unit, groups), "Control charts of " + value);
    }

    /**
     * Draws charts as PNG, twice as fine as the SVG's own size.
     *
     * @param value what was charted, for the titles
     * @param unit its unit; empty for none
     * @param groups the study of each group by its name; the first {@link #MOST_GROUPS} are drawn
     * @return the bytes of the picture
     */
    public static byte[] png(String value, String unit, Map<String, SeriesStudy> groups) {
        return Png.of(sheet(value, unit, groups));
    }

    private static Sheet sheet(String value, String unit, Map<String, SeriesStudy> groups) {
        var sheet = Sheet.empty(WIDTH);
        for (var group : groups.entrySet().stream().limit(MOST_GROUPS).toList()) {
            var study = group.getValue();
            var title = value + (group.getKey().isEmpty() ? "" : ", " + group.getKey()) + ": "
                    + study.kind().title() + ", n = " + study.values() + ", " + study.basis()
                    + (allTold(study) ? "" : "; " + study.signalCount() + " signals, not marked");
            for (var panel : study.panels()) {
                var chart = panel(panel, study, unit);
                int high = HEIGHT;
                if (panel.equals(study.panels().get(0))) {
                    Titles.title(chart, title);
                    high += Titles.high(title, WIDTH);
                }
                var rules = below(panel, study);
                if (!rules.isEmpty()) {
                    Titles.legend(chart, rules);
                    high += Titles.high(rules, WIDTH);
                }
                sheet = sheet.below(high, chart);
            }
        }
        return sheet;
    }

    private static String below(StudyPanel panel, SeriesStudy study) {
        var rules = allTold(study) ? SignalMarks.rules(panel, study) : "";
        boolean left = panel.lines().stream()
                .anyMatch(line -> line.chart().points().stream().anyMatch(point -> leftOut(line, point, study)));
        return rules + (left ? (rules.isEmpty() ? "" : "; ") + "hollow: left out of the limits" : "");
    }

    /** Of streams single values are left out, of other charts points. */
    private static boolean leftOut(PanelLine line, ChartPoint point, SeriesStudy study) {
        return study.removed().stream()
                .anyMatch(out -> out.point() == point.index() + 1
                        && (study.kind() != StudyKind.STREAMS || out.place().endsWith(", " + line.name())));
    }

    private static JFreeChart panel(StudyPanel panel, SeriesStudy study, String unit) {
        var all = panel.lines().stream()
                .flatMap(line -> line.chart().points().stream())
                .toList();
        double n = Math.max(
                study.points(),
                1 + all.stream().mapToInt(ChartPoint::index).max().orElse(1));
        double low = min(all, p -> Math.min(p.value(), p.lower()));
        double high = -min(all, p -> -Math.max(p.value(), p.upper()));
        double margin = high > low ? 0.14 * (high - low) : Math.max(1e-3, Math.abs(high) * 0.05);
        var plot = Plots.empty(
                Plots.axisTo(n, "point, in the order of the file", n * (1 + room(panel, study)) + 1),
                Plots.fineAxis(
                        panel.title() + (panel.inUnitOfValues() && !unit.isEmpty() ? ", " + unit : ""),
                        low - margin,
                        high + margin));
        plot.setRangeGridlinesVisible(false);
        var first = panel.lines().get(0).chart();
        boolean dense = first.points().size() > MOST_DOTS;
        if (!dense) {
            limits(plot, first, n);
        }
        for (var line : panel.lines()) {
            line(plot, line, weight(line, panel, study), study, n);
        }
        if (dense) {
            limits(plot, first, n);
        }
        names(plot, named(panel, study), n * (1 + limitRoom(panel)) + 0.9);
        if (allTold(study)) {
            SignalMarks.add(plot, panel, study, n);
        }
        return Plots.chart(plot);
    }

    /** Of a long series only the first signals are known by place: marks for them would say that the rest is quiet. */
    private static boolean allTold(SeriesStudy study) {
        return study.signalCount() == study.signals().size();
    }

    /** Room right of the last point for the words of limits and lines, as a share of the points. */
    private static double room(StudyPanel panel, SeriesStudy study) {
        double limits = limitRoom(panel);
        int longest = named(panel, study).stream()
                .mapToInt(line -> line.name().length())
                .max()
                .orElse(0);
        return Math.min(MOST_ROOM, longest == 0 ? limits + MARGIN : limits + CHARACTER_ROOM * longest);
    }

    private static double limitRoom(StudyPanel panel) {
        int longest = LimitWords.of(panel.lines().get(0).chart()).stream()
                .mapToInt(String::length)
                .max()
                .orElse(0);
        return Math.max(NAMES_FROM, MARGIN + CHARACTER_ROOM * longest);
    }

    /** The lines that get a name: all, or of many those that signal. */
    private static List<PanelLine> named(StudyPanel panel, SeriesStudy study) {
        var lines = panel.lines();
        if (lines.size() <= FEW_LINES) {
            return lines.size() > 1 ? lines : List.of();
        }
        var curves = lines.stream()
                .filter(line -> weight(line, panel, study) == Weight.CURVE)
                .limit(MOST_NAMES)
                .toList();
        return curves.isEmpty() && lines.size() <= MOST_NAMES ? lines : curves;
    }

    private static double min(List<ChartPoint> points, ToDoubleFunction<ChartPoint> of) {
        return points.stream().mapToDouble(of).min().orElse(0);
    }

    private enum Weight {
        /** Points joined by a faint line. */
        POINTS,
        /** A strong line: what carries the past on, and the one among many that a signal speaks of. */
        CURVE,
        /** One of many. */
        FAINT
    }

    private static Weight weight(PanelLine line, StudyPanel panel, SeriesStudy study) {
        var kind = line.chart().kind();
        if (kind == ChartKind.EWMA || kind == ChartKind.CUSUM) {
            return Weight.CURVE;
        }
        if (panel.lines().size() <= FEW_LINES) {
            return Weight.POINTS;
        }
        boolean named =
                study.signals().stream().anyMatch(signal -> signal.said().startsWith(line.name() + ' '));
        return named ? Weight.CURVE : Weight.FAINT;
    }

    private static void line(XYPlot plot, PanelLine line, Weight weight, SeriesStudy study, double n) {
        var points = line.chart().points();
        var series = Plots.thinned(
                points.size(),
                i -> points.get(i).index() + 1.0,
                i -> points.get(i).value(),
                MOST_POINTS);
        boolean curve = weight == Weight.CURVE;
        Plots.lines(plot, Plots.only(series), curve ? Ink.TRACE : Ink.PEER, curve ? 1.5f : 0.9f);
        if (points.size() > MOST_DOTS) {
            return;
        }
        var dots = Plots.series(0);
        var rings = Plots.series(0);
        for (var point : points) {
            (leftOut(line, point, study) ? rings : dots).add(point.index() + 1.0, point.value());
        }
        if (weight != Weight.FAINT) {
            Plots.points(plot, dots, PointsRenderer.dots(n > 300 ? 2f : curve ? 2.6f : 3.4f, Ink.TRACE));
        }
        Plots.points(plot, rings, PointsRenderer.ring());
    }

    /** The lines' names beside their last points, highest first, so far apart that they can be read. */
    private static void names(XYPlot plot, List<PanelLine> lines, double from) {
        double apart = LEAST_APART * plot.getRangeAxis().getRange().getLength();
        double free = Double.MAX_VALUE;
        var falling = Comparator.comparingDouble((PanelLine line) -> -last(line));
        for (var line : lines.stream().sorted(falling).toList()) {
            double height = Math.min(last(line), free);
            free = height - apart;
            plot.addAnnotation(Plots.text(line.name(), from, height, TextAnchor.CENTER_LEFT, Ink.FAINT));
        }
    }

    private static double last(PanelLine line) {
        var points = line.chart().points();
        return points.get(points.size() - 1).value();
    }

    private static void limits(XYPlot plot, Chart chart, double n) {
        limit(plot, chart, ChartPoint::upper, 1.2f, 4f, 3f);
        limit(plot, chart, ChartPoint::centre, 0.8f);
        limit(plot, chart, ChartPoint::lower, 1.2f, 4f, 3f);
        var last = chart.points().get(chart.points().size() - 1);
        double apart = LEAST_APART * plot.getRangeAxis().getRange().getLength();
        var words = LimitWords.of(chart);
        double centre = last.centre();
        double[] heights = {centre, Math.max(last.upper(), centre + apart), Math.min(last.lower(), centre - apart)};
        for (int i = 0; i < heights.length; i++) {
            plot.addAnnotation(
                    Plots.text(words.get(i), n + 0.6 + n * 0.01, heights[i], TextAnchor.CENTER_LEFT, Ink.WINDOW));
        }
    }

    private static void limit(XYPlot plot, Chart chart, ToDoubleFunction<ChartPoint> of, float width, float... dash) {
        var points = chart.points();
        var path = chart.kind() == ChartKind.EWMA
                ? Plots.thinned(
                        points.size(),
                        i -> points.get(i).index() + 1.0,
                        i -> of.applyAsDouble(points.get(i)),
                        MOST_POINTS)
                : steps(points, of);
        Plots.lines(plot, Plots.only(path), Ink.WINDOW, width, dash);
    }

    /** A flight of steps, each as wide as its point: where amounts differ, so do limits. */
    private static XYSeries steps(List<ChartPoint> points, ToDoubleFunction<ChartPoint> of) {
        var path = Plots.series(0);
        int from = 0;
        for (int i = 1; i <= points.size() && path.getItemCount() < MOST_POINTS; i++) {
            double level = of.applyAsDouble(points.get(from));
            if (i < points.size() && of.applyAsDouble(points.get(i)) == level) {
                continue;
            }
            path.add(points.get(from).index() + 0.5, level);
            path.add(points.get(i - 1).index() + 1.5, level);
            from = i;
        }
        return path;
    }
}
