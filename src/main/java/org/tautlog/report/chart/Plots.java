package org.tautlog.report.chart;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
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

    /** Round a point that breaks a rule. */
    static final Shape SQUARE = new Rectangle2D.Double(-3.5, -3.5, 7, 7);
    /** A point above the scale: a triangle that hangs from its upper edge and points up and out. */
    static final Shape ABOVE_SCALE = triangle(0, 7);
    /** A point below the scale: a triangle that stands on its lower edge and points down and out. */
    static final Shape BELOW_SCALE = triangle(0, -7);

    private Plots() {}

    private static Shape triangle(double tip, double base) {
        var path = new Path2D.Double();
        path.moveTo(0, tip);
        path.lineTo(-4.5, base);
        path.lineTo(4.5, base);
        path.closePath();
        return path;
    }

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
        var axis = new NumberAxis(label);
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

    static void dots(XYPlot plot, XYDataset data, Ink ink, float size) {
        add(plot, data, new DotsRenderer(size, ink));
    }

    /** Hollow shapes round or at each point: they tell themselves apart without their colour. */
    static void marks(XYPlot plot, XYDataset data, Shape shape) {
        if (data.getItemCount(0) == 0) {
            return;
        }
        var renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setAutoPopulateSeriesPaint(false);
        renderer.setAutoPopulateSeriesShape(false);
        renderer.setDefaultPaint(Ink.SIGNAL.colour());
        renderer.setDefaultShape(shape);
        renderer.setDefaultShapesFilled(shape != SQUARE);
        renderer.setDefaultOutlineStroke(new BasicStroke(1.2f));
        add(plot, data, renderer);
    }

    static XYTextAnnotation text(String words, double x, double y, TextAnchor anchor, Ink ink) {
        var text = new XYTextAnnotation(words, x, y);
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
