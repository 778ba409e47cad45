package org.tautlog.report.chart;

import java.awt.BasicStroke;
import java.awt.Font;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** What all charts of a report have in common: quiet axes, no frame, lines as one path each. */
final class Plots {
    private static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    private static final Font LABEL = new Font(Font.SANS_SERIF, Font.PLAIN, 13);

    private Plots() {}

    static XYPlot empty(NumberAxis domain, NumberAxis range) {
        var plot = new XYPlot(null, domain, range, null);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(Ink.RULE.colour());
        plot.setRangeGridlineStroke(new BasicStroke(0.7f));
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        return plot;
    }

    static NumberAxis axis(String label, double low, double high) {
        return axis(new NumberAxis(label), low, high);
    }

    /** An axis whose ticks have as many digits as it takes to tell them apart. */
    static NumberAxis fineAxis(String label, double low, double high) {
        var axis = axis(label, low, high);
        axis.setStandardTickUnits(new FineTicks(low, high));
        return axis;
    }

    /** An axis with ticks at stated places only. */
    static NumberAxis axisAt(String label, Map<Double, String> ticks, double low, double high) {
        return axis(new ScoreAxis(label, ticks), low, high);
    }

    /** An axis from 0 whose ticks end at the last point; what lies beyond is room for words. */
    static NumberAxis axisTo(double last, String label, double high) {
        var axis = axis(new AxisWithRoom(label, last), 0, high);
        axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits(Locale.ROOT));
        return axis;
    }

    private static NumberAxis axis(NumberAxis axis, double low, double high) {
        axis.setAutoRange(false);
        axis.setRange(low, high);
        axis.setStandardTickUnits(NumberAxis.createStandardTickUnits(Locale.ROOT));
        axis.setTickLabelFont(SMALL);
        axis.setLabelFont(LABEL);
        axis.setLabelPaint(Ink.TEXT.colour());
        axis.setTickLabelPaint(Ink.FAINT.colour());
        axis.setAxisLinePaint(Ink.FAINT.colour());
        axis.setTickMarkPaint(Ink.FAINT.colour());
        return axis;
    }

    static JFreeChart chart(XYPlot plot) {
        var chart = new JFreeChart(null, LABEL, plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(new RectangleInsets(6, 2, 2, 8));
        return chart;
    }

    static void lines(XYPlot plot, XYDataset data, Ink ink, float width) {
        var renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setAutoPopulateSeriesPaint(false);
        renderer.setAutoPopulateSeriesStroke(false);
        renderer.setDefaultPaint(ink.colour());
        renderer.setDefaultStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        add(plot, data, renderer);
    }

    static void lines(XYPlot plot, XYDataset data, Ink ink, float width, float... dash) {
        lines(plot, data, ink, width);
        if (dash.length > 0) {
            int last = plot.getDatasetCount() - 1;
            plot.getRenderer(last)
                    .setDefaultStroke(
                            new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0));
        }
    }

    /** A series as it is up to so many points; of a longer one the least and greatest value of each stretch. */
    static XYSeries thinned(int n, IntToDoubleFunction x, IntToDoubleFunction y, int most) {
        var line = series(0);
        if (n <= most) {
            IntStream.range(0, n).forEach(i -> line.add(x.applyAsDouble(i), y.applyAsDouble(i)));
            return line;
        }
        int stretches = most / 2;
        for (int s = 0; s < stretches; s++) {
            int from = (int) ((long) n * s / stretches);
            int to = (int) ((long) n * (s + 1) / stretches);
            int least = from;
            int greatest = from;
            for (int i = from; i < to; i++) {
                least = y.applyAsDouble(i) < y.applyAsDouble(least) ? i : least;
                greatest = y.applyAsDouble(i) > y.applyAsDouble(greatest) ? i : greatest;
            }
            for (int i : new int[] {Math.min(least, greatest), Math.max(least, greatest)}) {
                line.add(x.applyAsDouble(i), y.applyAsDouble(i));
            }
        }
        return line;
    }

    static void points(XYPlot plot, XYSeries points, PointsRenderer renderer) {
        if (!points.isEmpty()) {
            add(plot, only(points), renderer);
        }
    }

    static XYTextAnnotation text(String words, double x, double y, TextAnchor anchor, Ink ink) {
        var text = new XYTextAnnotation(Plain.of(words), x, y);
        text.setFont(SMALL);
        text.setPaint(ink.colour());
        text.setTextAnchor(anchor);
        return text;
    }

    static XYLineAnnotation line(double x1, double y1, double x2, double y2, Ink ink, float width, float... dash) {
        var stroke = dash.length == 0
                ? new BasicStroke(width)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0);
        return new XYLineAnnotation(x1, y1, x2, y2, stroke, ink.colour());
    }

    static XYSeries series(int key) {
        return new XYSeries(key, false, true);
    }

    static XYSeriesCollection only(XYSeries series) {
        return new XYSeriesCollection(series);
    }

    private static void add(XYPlot plot, XYDataset data, XYItemRenderer renderer) {
        int index = plot.getDatasetCount();
        if (index == 1 && plot.getDataset(0) == null) {
            index = 0;
        }
        plot.setDataset(index, data);
        plot.setRenderer(index, renderer);
    }
}
