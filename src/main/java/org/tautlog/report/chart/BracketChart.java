package org.tautlog.report.chart;

import java.awt.Color;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.tautlog.review.evidence.BracketCourse;
import org.tautlog.review.evidence.BracketCourse.Point;
import org.tautlog.review.evidence.BracketCourse.Step;

/**
 * A bracket along its spindle: the feature of every tightening around it, suspects, last and first known good, the held
 * stretch shaded, and where the level moved, with the stretch in which it may have.
 */
public final class BracketChart {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 270;
    /** Room above the values for the names of what is marked, two lines and one below, as shares of the scale. */
    private static final double ROOM = 0.34;

    private static final double OUTER = 0.02;
    private static final double MARGIN = 0.6;
    /** Between a line and its name, as a share of the tightenings shown. */
    private static final double GAP = 0.008;

    private static final int SHADE = 34;
    private static final int STEP_SHADE = 70;

    private BracketChart() {}

    /**
     * The scale on which courses can be compared: that of most values; the few beyond are drawn at its edge.
     *
     * @param courses courses of one feature
     * @return the scale
     */
    public static Range scale(List<BracketCourse> courses) {
        var values = courses.stream()
                .flatMap(course -> course.points().stream())
                .mapToDouble(Point::value)
                .sorted()
                .toArray();
        int outer = (int) (OUTER * values.length);
        double low = values[outer];
        double high = values[values.length - 1 - outer];
        double room = Math.max(MARGIN * (high - low), 1e-3 * Math.max(1e-3, Math.abs(high)));
        return new Range(low - room, high + room);
    }

    /**
     * Draws the chart.
     *
     * @param course the course
     * @param shared the scale of its values
     * @param place the spindle in words
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String svg(BracketCourse course, Range shared, String place, String id) {
        double top = shared.getUpperBound() + ROOM * shared.getLength();
        var plot = Plots.empty(
                Plots.axis("tightening of " + place + ", in time order", course.first() + 0.5, course.last() + 1.5),
                Plots.axis(course.feature().title() + ", " + course.feature().unit(), shared.getLowerBound(), top));
        plot.setRangeGridlinesVisible(false);
        double from = Math.max(course.first() + 0.5, course.begin() + 1.5);
        double to = Math.min(course.last() + 1.5, course.end() + 0.5);
        plot.addAnnotation(
                new XYBoxAnnotation(from, shared.getLowerBound(), to, top, null, null, faint(Ink.SIGNAL, SHADE)));
        course.change().ifPresent(step -> step(plot, course, step, shared, "level moved"));
        course.back().ifPresent(step -> step(plot, course, step, shared, "came back"));
        course.explained().ifPresent(first -> explained(plot, course, first, shared));
        points(plot, course, shared);
        names(plot, course, shared, from, to);
        return Svg.of(Plots.chart(plot), WIDTH, HEIGHT, id, description(course, place));
    }

    private static void points(XYPlot plot, BracketCourse course, Range shared) {
        var all = Plots.series(0);
        var suspects = Plots.series(0);
        var beyond = new EdgeMarks(shared, course.feature().title().contains("rate") ? 4 : 1, course.last() + 1.0);
        for (var point : course.points()) {
            all.add(point.place() + 1.0, shared.constrain(point.value()));
            if (point.suspect()) {
                suspects.add(point.place() + 1.0, EdgeMarks.inside(shared, point.value()));
            }
            beyond.add(point.place() + 1.0, point.value(), point.suspect());
        }
        Plots.lines(plot, Plots.only(all), Ink.PEER, 0.8f);
        Plots.points(plot, all, PointsRenderer.dots(2.6f, Ink.TRACE));
        Plots.points(plot, suspects, PointsRenderer.square());
        beyond.draw(plot);
    }

    private static void step(XYPlot plot, BracketCourse course, Step step, Range shared, String name) {
        double from = inside(course, step.earliest() + 0.5);
        double to = inside(course, step.latest() + 1.5);
        double rim = 0.05 * shared.getLength();
        double foot = shared.getLowerBound();
        plot.addAnnotation(
                new XYBoxAnnotation(from, foot, to, foot + rim, null, null, faint(Ink.WINDOW, 2 * STEP_SHADE)));
        double at = step.likeliest() + 0.5;
        if (at >= course.first() && at <= course.last() + 1) {
            plot.addAnnotation(Plots.line(at, foot, at, shared.getUpperBound(), Ink.WINDOW, 1.4f, 5f, 3f));
            boolean left = at > (course.first() + course.last()) / 2.0;
            plot.addAnnotation(Plots.text(
                    name,
                    beside(course, at, left),
                    foot + 2 * rim,
                    left ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT,
                    Ink.WINDOW));
        }
    }

    private static void explained(XYPlot plot, BracketCourse course, int first, Range shared) {
        double at = first + 0.5;
        if (at < course.first() || at > course.last() + 1) {
            return;
        }
        double foot = shared.getLowerBound();
        plot.addAnnotation(Plots.line(at, foot, at, shared.getUpperBound(), Ink.TEXT, 1.4f, 1.5f, 2.5f));
        boolean left = at > (course.first() + course.last()) / 2.0;
        plot.addAnnotation(Plots.text(
                "explained",
                beside(course, at, left),
                foot + 0.2 * shared.getLength(),
                left ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT,
                Ink.TEXT));
    }

    private static void names(XYPlot plot, BracketCourse course, Range shared, double from, double to) {
        double line = ROOM / 3 * shared.getLength();
        double edge = shared.getUpperBound();
        boolean right = (from + to) / 2 > (course.first() + course.last()) / 2.0 + 1;
        plot.addAnnotation(Plots.text(
                "held",
                beside(course, right ? to : from, right),
                edge + 2.4 * line,
                right ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT,
                Ink.SIGNAL));
        if (course.begin() >= course.first()) {
            end(plot, course, course.begin() + 1.0, "last good", shared, edge + 1.5 * line);
        }
        if (course.end() <= course.last()) {
            end(plot, course, course.end() + 1.0, "first good", shared, edge + 0.6 * line);
        }
    }

    private static void end(XYPlot plot, BracketCourse course, double at, String name, Range shared, double height) {
        plot.addAnnotation(Plots.line(at, shared.getLowerBound(), at, height, Ink.TEXT, 1f));
        boolean left = at > (course.first() + course.last()) / 2.0 + 1;
        plot.addAnnotation(Plots.text(
                name,
                beside(course, at, left),
                height,
                left ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT,
                Ink.TEXT));
    }

    private static double beside(BracketCourse course, double at, boolean left) {
        double gap = GAP * (course.last() - course.first() + 1);
        return left ? at - gap : at + gap;
    }

    private static double inside(BracketCourse course, double at) {
        return Math.max(course.first() + 0.5, Math.min(course.last() + 1.5, at));
    }

    private static Color faint(Ink ink, int alpha) {
        var fill = ink.colour();
        return new Color(fill.getRed(), fill.getGreen(), fill.getBlue(), alpha);
    }

    private static String description(BracketCourse course, String place) {
        return String.format(
                Locale.ROOT,
                "%s on %s, n = %d, tightenings %d to %d in time order; held after %s up to %s%s",
                course.feature().title(),
                place,
                course.n(),
                course.first() + 1,
                course.last() + 1,
                course.begin() < 0 ? "no known good" : "tightening " + (course.begin() + 1),
                course.end() > course.last() ? "the end" : "tightening " + (course.end() + 1),
                course.change()
                        .map(step -> "; level moved at tightening " + (step.likeliest() + 1))
                        .orElse(""));
    }
}
