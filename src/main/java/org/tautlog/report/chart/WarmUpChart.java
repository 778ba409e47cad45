package org.tautlog.report.chart;

import org.jfree.chart.ui.TextAnchor;
import org.tautlog.joint.study.Envelope;

/** Each dot one drawn bolt: its clamp load when tightened, and when cold again after the first warm-up. */
public final class WarmUpChart {
    /** How many bolts are drawn as dots at most: more would only hide each other. */
    public static final int MOST_DOTS = 800;

    private static final int WIDTH = 480;
    private static final int HEIGHT = 320;
    private static final double N_PER_KN = 1000;
    private static final double MARGIN = 0.06;

    private WarmUpChart() {}

    /**
     * Draws it.
     *
     * @param envelope the bolts drawn
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String svg(Envelope envelope, String id) {
        var dots = Plots.series(0);
        envelope.pairs().stream()
                .limit(MOST_DOTS)
                .forEach(pair -> dots.add(pair.tightenedN() / N_PER_KN, pair.coldAfterN() / N_PER_KN));
        double left = dots.getMinX();
        double right = dots.getMaxX();
        double bottom = dots.getMinY();
        double top = Math.max(dots.getMaxY(), left);
        double across = Math.max(right - left, 0.1) * MARGIN;
        double up = Math.max(top - bottom, 0.1) * MARGIN;
        var plot = Plots.empty(
                Plots.axis("clamp load as tightened, kN", left - across, right + across),
                Plots.axis("cold after the first warm-up, kN", bottom - 2 * up, top + 3 * up));
        double from = Math.max(left - across, bottom - 2 * up);
        double to = Math.min(right + across, top + 3 * up);
        plot.addAnnotation(Plots.line(from, from, to, to, Ink.FAINT, 1f, 4f, 3f));
        plot.addAnnotation(Plots.text(" nothing lost", to, to, TextAnchor.TOP_LEFT, Ink.FAINT));
        Plots.points(plot, dots, PointsRenderer.dots(2.2f, Ink.WINDOW));
        return Svg.of(
                Plots.chart(plot),
                WIDTH,
                HEIGHT,
                id,
                "Clamp load before and after the first warm-up of " + dots.getItemCount() + " drawn bolts");
    }
}
