package org.tautlog.report.chart;

import java.awt.Font;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartPoint;
import org.tautlog.spc.study.PanelLine;
import org.tautlog.spc.study.SeriesStudy;
import org.tautlog.spc.study.StudyPanel;
import org.tautlog.spc.study.StudySignal;

/** The panels of control charts below each other in one drawing that stands alone: titles, limits and signals in words. */
public final class SeriesChart {
    /** Most groups that are drawn in one file. */
    public static final int MOST_GROUPS = 24;

    private static final int WIDTH = 900;
    private static final int HEIGHT = 260;
    private static final int MOST_LABELS = 8;
    private static final int MOST_NAMES = 12;
    private static final double LABEL_ROOM = 0.26;
    private static final MathContext DIGITS = new MathContext(6);
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 13);

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
        return Svg.standing(charts(value, unit, groups), WIDTH, HEIGHT, "Control charts of " + value);
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
        return Png.of(charts(value, unit, groups), WIDTH, HEIGHT);
    }

    private static List<JFreeChart> charts(String value, String unit, Map<String, SeriesStudy> groups) {
        var charts = new ArrayList<JFreeChart>();
        groups.entrySet().stream().limit(MOST_GROUPS).forEach(group -> {
            var study = group.getValue();
            boolean first = true;
            for (var panel : study.panels()) {
                var chart = panel(panel, study, unit);
                if (first) {
                    var title = new TextTitle(
                            value + (group.getKey().isEmpty() ? "" : ", " + group.getKey()) + ": "
                                    + study.kind().title() + ", n = " + study.values() + ", " + study.basis(),
                            TITLE);
                    title.setPaint(Ink.TEXT.colour());
                    title.setHorizontalAlignment(HorizontalAlignment.LEFT);
                    chart.setTitle(title);
                }
                first = false;
                charts.add(chart);
            }
        });
        return charts;
    }

    private static JFreeChart panel(StudyPanel panel, SeriesStudy study, String unit) {
        var all = panel.lines().stream()
                .flatMap(line -> line.chart().points().stream())
                .toList();
        double n = 1 + all.stream().mapToInt(ChartPoint::index).max().orElse(1);
        double low = min(all, p -> Math.min(p.value(), p.lower()));
        double high = -min(all, p -> -Math.max(p.value(), p.upper()));
        double margin = high > low ? 0.14 * (high - low) : Math.max(1e-3, Math.abs(high) * 0.05);
        var plot = Plots.empty(
                Plots.axis("point, in the order of the file", 0, n * (1 + LABEL_ROOM) + 1),
                Plots.axis(
                        panel.title() + (panel.inUnitOfValues() && !unit.isEmpty() ? ", " + unit : ""),
                        low - margin,
                        high + margin));
        plot.setRangeGridlinesVisible(false);
        limits(plot, panel.lines().get(0).chart(), n);
        for (var line : panel.lines()) {
            line(plot, line, panel.lines().size(), n);
        }
        signals(plot, panel, study, n);
        return Plots.chart(plot);
    }

    private static double min(List<ChartPoint> points, ToDoubleFunction<ChartPoint> of) {
        return points.stream().mapToDouble(of).min().orElse(0);
    }

    private static void line(XYPlot plot, PanelLine line, int lines, double n) {
        var series = Plots.series(0);
        line.chart().points().forEach(point -> series.add(point.index() + 1.0, point.value()));
        Plots.lines(plot, Plots.only(series), Ink.PEER, 0.9f);
        Plots.points(plot, series, PointsRenderer.dots(n > 300 ? 2f : 3.4f, Ink.TRACE));
        if (lines > 1 && lines <= MOST_NAMES) {
            var last = line.chart().points().get(line.chart().points().size() - 1);
            plot.addAnnotation(
                    Plots.text(line.name(), n * 1.14 + 0.9, last.value(), TextAnchor.CENTER_LEFT, Ink.FAINT));
        }
    }

    private static void limits(XYPlot plot, Chart chart, double n) {
        step(plot, chart, ChartPoint::upper, "upper", 4f, 3f);
        step(plot, chart, ChartPoint::centre, "centre");
        step(plot, chart, ChartPoint::lower, "lower", 4f, 3f);
        var last = chart.points().get(chart.points().size() - 1);
        Stream.of(
                        new Label("upper", last.upper()),
                        new Label("centre", last.centre()),
                        new Label("lower", last.lower()))
                .forEach(label -> plot.addAnnotation(Plots.text(
                        label.name + ' ' + digits(label.value),
                        n + 0.6 + n * 0.01,
                        label.value,
                        TextAnchor.CENTER_LEFT,
                        Ink.WINDOW)));
    }

    private record Label(String name, double value) {}

    /** A limit as a flight of steps, each as wide as its point: where amounts differ, so do limits. */
    private static void step(XYPlot plot, Chart chart, ToDoubleFunction<ChartPoint> of, String name, float... dash) {
        var points = chart.points();
        int from = 0;
        for (int i = 1; i <= points.size(); i++) {
            double level = of.applyAsDouble(points.get(from));
            if (i < points.size() && of.applyAsDouble(points.get(i)) == level) {
                continue;
            }
            double x1 = points.get(from).index() + 0.5;
            double x2 = points.get(i - 1).index() + 1.5;
            plot.addAnnotation(Plots.line(x1, level, x2, level, Ink.WINDOW, name.equals("centre") ? 0.8f : 1.2f, dash));
            if (i < points.size()) {
                double next = of.applyAsDouble(points.get(i));
                plot.addAnnotation(Plots.line(x2, level, x2, next, Ink.WINDOW, 0.6f, dash));
            }
            from = i;
        }
    }

    private static void signals(XYPlot plot, StudyPanel panel, SeriesStudy study, double n) {
        var here = study.signals().stream()
                .filter(signal -> signal.panel().equals(panel.title()))
                .toList();
        XYSeries marks = Plots.series(0);
        var room = plot.getRangeAxis().getRange();
        double lift = 0.06 * room.getLength();
        int labels = 0;
        StudySignal before = null;
        for (StudySignal signal : here) {
            double y = room.constrain(signal.value());
            marks.add(signal.point(), y);
            boolean goesOn = before != null
                    && before.point() + 1 == signal.point()
                    && kind(before).equals(kind(signal));
            before = signal;
            if (!goesOn && labels++ < MOST_LABELS) {
                boolean below = y < room.getCentralValue();
                var words = signal.said()
                        .replace("above the upper limit", "above")
                        .replace("below the lower limit", "below");
                plot.addAnnotation(Plots.text(
                        signal.point() + " " + words,
                        signal.point(),
                        y + (below ? -lift : lift),
                        words.length() < 8
                                ? TextAnchor.CENTER
                                : signal.point() < n * 0.6 ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT,
                        Ink.SIGNAL));
            }
        }
        Plots.points(plot, marks, PointsRenderer.square());
    }

    /** What a signal says but for its numbers: of a run of the same only the first is put into words. */
    private static String kind(StudySignal signal) {
        return signal.said().replaceAll("[0-9.]+", "");
    }

    private static String digits(double value) {
        var rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 || rounded.scale() > 9 ? rounded.toString() : rounded.toPlainString();
    }
}
