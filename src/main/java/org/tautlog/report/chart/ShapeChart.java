package org.tautlog.report.chart;

import java.awt.Color;
import java.util.List;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.ui.TextAnchor;
import org.tautlog.review.shape.ShapeComparison;

/** One curve less what its peers let expect, over the angle past its elastic origin, with the envelope around it. */
public final class ShapeChart {
    private static final int WIDTH = 460;
    private static final int HEIGHT = 190;
    private static final int FILL_ALPHA = 46;
    private static final double ROOM = 1.12;

    private ShapeChart() {}

    /**
     * Draws one.
     *
     * @param comparison the curve and its peers' envelope
     * @param id a name for the drawing's own parts, unique in its page
     * @param description the drawing in words
     * @return an SVG element
     */
    public static String svg(ShapeComparison comparison, String id, String description) {
        var steps = comparison.steps();
        double left = steps.get(0).angleDeg();
        double right = steps.get(steps.size() - 1).angleDeg();
        double furthest = steps.stream()
                .mapToDouble(step -> Math.max(Math.abs(step.excessNm()), step.allowedNm()))
                .max()
                .orElse(1);
        var departure = comparison.departure();
        var plot = Plots.empty(
                Plots.axis("angle past the elastic origin, deg", left, right),
                Plots.axis("excess, N·m", -ROOM * furthest, ROOM * furthest));
        plot.addAnnotation(envelope(steps));
        var own = Plots.series(0);
        var beyond = Plots.series(0);
        for (var step : steps) {
            own.add(step.angleDeg(), step.excessNm());
            if (Math.abs(step.excessNm()) > step.allowedNm()) {
                beyond.add(step.angleDeg(), step.excessNm());
            }
        }
        Plots.lines(plot, Plots.only(own), Ink.TRACE, 1.6f);
        Plots.points(plot, beyond, PointsRenderer.dots(4f, Ink.SIGNAL));
        boolean leftHalf = departure.atDeg() < (left + right) / 2;
        plot.addAnnotation(Plots.text(
                leftHalf ? "  " + departure.zone().title() : departure.zone().title() + "  ",
                departure.atDeg(),
                departure.excessNm(),
                leftHalf ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT,
                Ink.SIGNAL));
        return Svg.of(Plots.chart(plot), WIDTH, HEIGHT, id, description);
    }

    private static XYPolygonAnnotation envelope(List<ShapeComparison.Step> steps) {
        int n = steps.size();
        var corners = new double[4 * n];
        for (int i = 0; i < n; i++) {
            corners[2 * i] = steps.get(i).angleDeg();
            corners[2 * i + 1] = steps.get(i).allowedNm();
            corners[2 * (n + i)] = steps.get(n - 1 - i).angleDeg();
            corners[2 * (n + i) + 1] = -steps.get(n - 1 - i).allowedNm();
        }
        var fill = Ink.WINDOW.colour();
        return new XYPolygonAnnotation(
                corners, null, null, new Color(fill.getRed(), fill.getGreen(), fill.getBlue(), FILL_ALPHA));
    }
}
