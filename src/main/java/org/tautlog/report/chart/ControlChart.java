package org.tautlog.report.chart;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.StreamChart;
import org.tautlog.spc.chart.ChartPoint;

/** One feature of one stream in time order with its control limits; points that break a rule stand out. */
public final class ControlChart {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 200;
    private static final int MOST_POINTS = 300;
    private static final double LABEL_ROOM = 0.42;
    private static final float ENGINE_DOT = 8f;

    private ControlChart() {}

    /**
     * Draws one in which the points of an engine stand out. A point beyond the scale is drawn at its edge with its value.
     *
     * @param chart values, limits and signals
     * @param shared the scale of its values
     * @param id a name for the drawing's own parts, unique in its page
     * @param serial the engine; empty for none
     * @return an SVG element
     */
    public static String svg(StreamChart chart, ControlScale shared, String id, String serial) {
        var values = chart.values();
        var limits = chart.chart().found();
        var scale = shared.range();
        double n = Math.max(2, values.size());
        var plot = Plots.empty(
                Plots.axis("tightening, in time order", 0, n * (1 + LABEL_ROOM)),
                Plots.axis(axis(chart.feature()), scale.getLowerBound(), scale.getUpperBound()));
        plot.setRangeGridlinesVisible(false);
        var line = Plots.thinned(values.size(), i -> i + 1.0, i -> scale.constrain(values.get(i)), MOST_POINTS);
        Plots.lines(plot, Plots.only(line), Ink.PEER, 0.8f);
        Plots.points(plot, line, PointsRenderer.dots(2.4f, Ink.TRACE));
        addSignals(plot, chart.signals(), scale);
        addEngine(plot, chart, scale, serial);
        var aside = Plots.series(0);
        chart.aside().stream()
                .limit(MOST_POINTS)
                .forEach(one -> aside.add(one.before() + 0.5, EdgeMarks.inside(scale, one.value())));
        Plots.points(plot, aside, PointsRenderer.cross());
        addBeyond(plot, chart, scale, n);
        limits.ifPresent(found -> addLimits(plot, found.points().get(0), chart.feature(), n));
        return Svg.of(Plots.chart(plot), WIDTH, HEIGHT, id, description(chart));
    }

    private static void addEngine(XYPlot plot, StreamChart chart, Range scale, String serial) {
        var own = Plots.series(0);
        for (int i = 0; i < chart.values().size(); i++) {
            if (chart.tightenings().get(i).serial().equals(serial)) {
                own.add(i + 1.0, scale.constrain(chart.values().get(i)));
            }
        }
        chart.aside().stream()
                .filter(one -> one.tightening().serial().equals(serial))
                .forEach(one -> own.add(one.before() + 0.5, scale.constrain(one.value())));
        if (!own.isEmpty()) {
            Plots.points(plot, own, PointsRenderer.dots(ENGINE_DOT, Ink.ELASTIC));
        }
    }

    private static String axis(ChartedFeature feature) {
        return switch (feature) {
            case ONSET_ANGLE -> "onset angle, deg";
            case CLAMP_LOAD -> "clamp load, kN";
            case FINAL_TORQUE, TORQUE_RATE, TURN, ONSET_TORQUE, SPRING_BACK -> feature.title() + ", " + feature.unit();
        };
    }

    private static void addSignals(XYPlot plot, List<ChartPoint> signals, Range scale) {
        var squares = Plots.series(0);
        signals.stream()
                .limit(MOST_POINTS)
                .filter(point -> scale.contains(point.value()))
                .forEach(point -> squares.add(point.index() + 1, point.value()));
        Plots.points(plot, squares, PointsRenderer.square());
    }

    private static void addBeyond(XYPlot plot, StreamChart chart, Range scale, double n) {
        var beyond = new EdgeMarks(scale, decimals(chart.feature()), n);
        for (int i = 0; i < chart.values().size(); i++) {
            beyond.add(i + 1.0, chart.values().get(i), false);
        }
        chart.aside().forEach(one -> beyond.add(one.before() + 0.5, one.value(), true));
        beyond.draw(plot);
    }

    private static int decimals(ChartedFeature feature) {
        return feature == ChartedFeature.TORQUE_RATE ? 4 : 1;
    }

    private static void addLimits(XYPlot plot, ChartPoint point, ChartedFeature feature, double n) {
        limit(plot, point.upper(), "upper", feature, n, 4f, 3f);
        limit(plot, point.centre(), "mean", feature, n);
        limit(plot, point.lower(), "lower", feature, n, 4f, 3f);
    }

    private static void limit(XYPlot plot, double value, String name, ChartedFeature feature, double n, float... dash) {
        var words = String.format(Locale.ROOT, "%s %." + decimals(feature) + "f", name, value);
        plot.addAnnotation(Plots.line(0, value, n * 1.01, value, Ink.WINDOW, 1f, dash));
        plot.addAnnotation(Plots.text(words, n * 1.02, value, TextAnchor.CENTER_LEFT, Ink.WINDOW));
    }

    private static String description(StreamChart chart) {
        return "Control chart of " + chart.feature().title() + " on "
                + chart.stream().words() + ", "
                + count(chart.values().size(), "tightening") + ", "
                + count(chart.signals().size(), "signal") + ", " + chart.aside().size() + " set aside";
    }

    private static String count(int n, String one) {
        return n + " " + one + (n == 1 ? "" : "s");
    }
}
