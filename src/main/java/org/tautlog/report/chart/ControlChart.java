package org.tautlog.report.chart;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.jspecify.annotations.Nullable;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.StreamChart;
import org.tautlog.spc.chart.ChartPoint;

/** One feature of one stream in time order with its control limits; points that break a rule stand out. */
public final class ControlChart {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 200;
    private static final int MOST_POINTS = 300;
    private static final double LABEL_ROOM = 0.42;
    /** The scale reaches this many times the distance of the limits beyond them; points further out stand at its edge. */
    private static final double REACH = 0.35;

    private static final float ENGINE_DOT = 8f;

    private ControlChart() {}

    /**
     * Draws one. A point far out is drawn at the edge of the scale as a triangle, so that it cannot flatten the others.
     *
     * @param chart values, limits and signals
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String svg(StreamChart chart, String id) {
        return svg(chart, id, "");
    }

    /**
     * Draws one in which the points of an engine stand out.
     *
     * @param chart values, limits and signals
     * @param id a name for the drawing's own parts, unique in its page
     * @param serial the engine; empty for none
     * @return an SVG element
     */
    public static String svg(StreamChart chart, String id, String serial) {
        var values = chart.values();
        var limits = chart.chart().found();
        var scale = scale(values, limits.map(found -> found.points().get(0)).orElse(null));
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
                .forEach(one -> aside.add(one.before() + 0.5, inside(scale, one.value())));
        Plots.points(plot, aside, PointsRenderer.cross());
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

    /** Within the scale by so much that a mark is not cut. */
    private static double inside(Range scale, double value) {
        double rim = 0.04 * scale.getLength();
        return Math.max(scale.getLowerBound() + rim, Math.min(scale.getUpperBound() - rim, value));
    }

    private static String axis(ChartedFeature feature) {
        return switch (feature) {
            case ONSET_ANGLE -> "onset angle, deg";
            case CLAMP_LOAD -> "clamp load, kN";
            case FINAL_TORQUE, TORQUE_RATE, TURN, ONSET_TORQUE -> feature.title() + ", " + feature.unit();
        };
    }

    private static Range scale(List<Double> values, @Nullable ChartPoint limits) {
        double low = values.stream().mapToDouble(v -> v).min().orElse(0);
        double high = values.stream().mapToDouble(v -> v).max().orElse(1);
        if (limits != null) {
            double reach = REACH * (limits.upper() - limits.lower());
            low = Math.min(limits.lower() - reach / 4, Math.max(low, limits.lower() - reach));
            high = Math.max(limits.upper() + reach / 4, Math.min(high, limits.upper() + reach));
        }
        double margin = high > low ? 0.06 * (high - low) : Math.max(1e-3, Math.abs(high) * 0.05);
        return new Range(low - margin, high + margin);
    }

    private static void addSignals(XYPlot plot, List<ChartPoint> signals, Range scale) {
        var near = Plots.series(0);
        var above = Plots.series(0);
        var below = Plots.series(0);
        signals.stream().limit(MOST_POINTS).forEach(point -> {
            var mark = point.value() > scale.getUpperBound()
                    ? above
                    : point.value() < scale.getLowerBound() ? below : near;
            mark.add(point.index() + 1, scale.constrain(point.value()));
        });
        Plots.points(plot, near, PointsRenderer.square());
        Plots.points(plot, above, PointsRenderer.aboveScale());
        Plots.points(plot, below, PointsRenderer.belowScale());
    }

    private static void addLimits(XYPlot plot, ChartPoint point, ChartedFeature feature, double n) {
        limit(plot, point.upper(), "upper", feature, n, 4f, 3f);
        limit(plot, point.centre(), "mean", feature, n);
        limit(plot, point.lower(), "lower", feature, n, 4f, 3f);
    }

    private static void limit(XYPlot plot, double value, String name, ChartedFeature feature, double n, float... dash) {
        var words = String.format(
                Locale.ROOT, "%s %." + (feature == ChartedFeature.TORQUE_RATE ? 4 : 1) + "f", name, value);
        plot.addAnnotation(Plots.line(0, value, n * 1.01, value, Ink.WINDOW, 1f, dash));
        plot.addAnnotation(Plots.text(words, n * 1.02, value, TextAnchor.CENTER_LEFT, Ink.WINDOW));
    }

    private static String description(StreamChart chart) {
        return "Control chart of " + chart.feature().title() + " on "
                + chart.stream().words() + ", " + chart.values().size() + " tightenings, "
                + chart.signals().size()
                + " signals, " + chart.aside().size() + " set aside";
    }
}
