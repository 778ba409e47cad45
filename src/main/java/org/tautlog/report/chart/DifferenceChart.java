package org.tautlog.report.chart;

import java.util.ArrayList;
import java.util.Locale;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.OwnShift;

/** One spindle less the others of its station, engine by engine, with the step that was found and when it may have been. */
public final class DifferenceChart {
    private static final int WIDTH = 520;
    private static final int HEIGHT = 210;
    private static final double LABEL_ROOM = 0.2;
    private static final int MOST_POINTS = 600;

    private DifferenceChart() {}

    /**
     * Draws one.
     *
     * @param shift the differences with their step
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String svg(OwnShift shift, String id) {
        var values = shift.differences();
        int n = values.size();
        var scale = scale(shift);
        var plot = Plots.empty(
                Plots.axis("engine, in time order", 0, n * (1 + LABEL_ROOM)),
                Plots.axis("less the others, " + shift.feature().unit(), scale.getLowerBound(), scale.getUpperBound()));
        plot.setRangeGridlinesVisible(false);
        plot.addAnnotation(Plots.line(0, 0, n, 0, Ink.RULE, 1f));
        var points = Plots.series(0);
        for (int i = 0; i < n; i += Math.max(1, n / MOST_POINTS)) {
            points.add(i + 1.0, scale.constrain(values.get(i)));
        }
        Plots.points(plot, points, PointsRenderer.dots(2.6f, Ink.TRACE));
        if (shift.point() != null) {
            var step = shift.step();
            double at = step.index() + 0.5;
            plot.addAnnotation(Plots.line(0, step.before(), at, step.before(), Ink.WINDOW, 1.6f));
            plot.addAnnotation(Plots.line(at, step.after(), n + 0.5, step.after(), Ink.WINDOW, 1.6f));
            for (double bound : new double[] {step.earliest() + 0.5, step.latest() + 0.5}) {
                plot.addAnnotation(
                        Plots.line(bound, scale.getLowerBound(), bound, scale.getUpperBound(), Ink.SIGNAL, 1f, 3f, 3f));
            }
            plot.addAnnotation(Plots.text(words(shift), n * 1.02, step.after(), TextAnchor.CENTER_LEFT, Ink.WINDOW));
        }
        return Svg.of(Plots.chart(plot), WIDTH, HEIGHT, id, description(shift));
    }

    private static String words(OwnShift shift) {
        int decimals = shift.feature() == ChartedFeature.TORQUE_RATE ? 4 : 1;
        return String.format(
                        Locale.ROOT, "%+." + decimals + "f", shift.step().size().value())
                .replace('-', '−');
    }

    private static Range scale(OwnShift shift) {
        var sorted = new ArrayList<>(shift.differences());
        sorted.sort(null);
        int n = sorted.size();
        double low = sorted.get((int) (0.01 * (n - 1)));
        double high = sorted.get((int) Math.ceil(0.99 * (n - 1)));
        double margin = high > low ? 0.1 * (high - low) : Math.max(1e-3, 0.05 * Math.abs(high));
        return new Range(low - margin, high + margin);
    }

    private static String description(OwnShift shift) {
        return shift.feature().title() + " of " + shift.stream().words()
                + " less that of its station's other spindles, "
                + shift.differences().size() + " engines";
    }
}
