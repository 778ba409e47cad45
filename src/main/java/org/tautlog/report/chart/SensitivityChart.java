package org.tautlog.report.chart;

import java.awt.Font;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.CategoryLabelPositions;
import org.jfree.chart.labels.CategoryItemLabelGenerator;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;
import org.tautlog.joint.study.Driver;

/** Bars of what drives a clamp load's scatter, the strongest factor first, each with its share and its effect beside it. */
public final class SensitivityChart {
    private static final int WIDTH = 480;
    private static final int AXIS_HEIGHT = 56;
    private static final int BAR_HEIGHT = 26;
    private static final double N_PER_KN = 1000;
    private static final double PERCENT = 100;
    /** Room right of the longest bar for its words, as a share of the bar. */
    private static final double WORDS_SHARE = 0.75;

    private static final double LEAST_SPAN_PERCENT = 5;
    private static final Font WORDS = new Font(Font.SANS_SERIF, Font.PLAIN, 12);

    private SensitivityChart() {}

    /**
     * Draws the factors.
     *
     * @param drivers the factors that are worth showing, strongest first; their effects are in N
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String svg(List<Driver> drivers, String id) {
        var bars = new DefaultCategoryDataset();
        drivers.forEach(driver -> bars.addValue(
                PERCENT * driver.varianceShare(), "share", driver.factor().title()));
        double longest = drivers.stream()
                .mapToDouble(driver -> PERCENT * driver.varianceShare())
                .max()
                .orElse(0);
        var shares =
                Plots.axis("share of the variance, %", 0, Math.max(LEAST_SPAN_PERCENT, longest) * (1 + WORDS_SHARE));
        var plot = new CategoryPlot(bars, factors(), shares, renderer(drivers));
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        var chart = new JFreeChart(null, WORDS, plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(new RectangleInsets(2, 2, 2, 8));
        return Svg.of(chart, WIDTH, AXIS_HEIGHT + BAR_HEIGHT * Math.max(1, drivers.size()), id, description(drivers));
    }

    private static CategoryAxis factors() {
        var axis = new CategoryAxis();
        axis.setTickLabelFont(WORDS);
        axis.setTickLabelPaint(Ink.TEXT.colour());
        axis.setAxisLinePaint(Ink.FAINT.colour());
        axis.setTickMarksVisible(false);
        axis.setCategoryLabelPositions(CategoryLabelPositions.STANDARD);
        axis.setMaximumCategoryLabelWidthRatio(0.5f);
        axis.setLowerMargin(0.01);
        axis.setUpperMargin(0.01);
        axis.setCategoryMargin(0.35);
        return axis;
    }

    private static BarRenderer renderer(List<Driver> drivers) {
        var renderer = new BarRenderer();
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(false);
        renderer.setSeriesPaint(0, Ink.WINDOW.colour());
        renderer.setDefaultItemLabelsVisible(true);
        renderer.setDefaultItemLabelFont(WORDS);
        renderer.setDefaultItemLabelPaint(Ink.TEXT.colour());
        renderer.setDefaultPositiveItemLabelPosition(
                new ItemLabelPosition(ItemLabelAnchor.OUTSIDE3, TextAnchor.CENTER_LEFT));
        renderer.setDefaultItemLabelGenerator(new Words(drivers));
        return renderer;
    }

    private static String words(Driver driver) {
        return String.format(
                        Locale.ROOT,
                        "%.0f %%, %+.2f kN",
                        PERCENT * driver.varianceShare(),
                        driver.effectPerDeviation() / N_PER_KN)
                .replace('-', '\u2212');
    }

    private static String description(List<Driver> drivers) {
        return "Share of the variance and effect of one standard deviation: "
                + drivers.stream()
                        .map(driver -> driver.factor().title() + ' ' + words(driver))
                        .collect(Collectors.joining("; "));
    }

    /** The words beside each bar. */
    private record Words(List<Driver> drivers) implements CategoryItemLabelGenerator {
        @Override
        public String generateRowLabel(CategoryDataset data, int row) {
            return "";
        }

        @Override
        public String generateColumnLabel(CategoryDataset data, int column) {
            return drivers.get(column).factor().title();
        }

        @Override
        public String generateLabel(CategoryDataset data, int row, int column) {
            return words(drivers.get(column));
        }
    }
}
