package org.tautlog.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeriesCollection;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.joint.window.Window;
import org.tautlog.review.Listed;
import org.tautlog.review.Outline;
import org.tautlog.signature.Feature;
import org.tautlog.trace.Curve;

/** One trace over its peers, all aligned at the elastic origin, with its named points and the window. */
public final class TraceChart {
    private static final int WIDTH = 460;
    private static final int HEIGHT = 290;
    private static final int MOST_PEERS = 8;
    private static final int PEER_STEP = 3;
    /** A label to the left of a point needs this share of the chart's width. */
    private static final double LABEL_SHARE = 0.11;

    /** No more rundown is drawn than this many times the turn, so that the part that matters stays legible. */
    private static final double USUAL_RUNDOWN = 0.3;
    /** Where a finding is about the rundown itself, or the zero is not known, this much of it is drawn. */
    private static final double LONG_RUNDOWN = 3;

    private static final Set<FindingCode> ABOUT_RUNDOWN = EnumSet.of(
            FindingCode.CROSS_THREADED,
            FindingCode.PREVAILING_TORQUE_HIGH,
            FindingCode.ALREADY_TIGHT,
            FindingCode.WRONG_PARTS,
            FindingCode.SOFT_SEATING,
            FindingCode.NOT_SEATED);

    private final Listed listed;
    private final Window window;
    private final Outline.Zero zero;
    private final double zeroDeg;

    private TraceChart(Listed listed, Window window) {
        this.listed = listed;
        this.window = window;
        this.zero = listed.outline().best();
        this.zeroDeg = listed.outline().zeroDeg(zero).orElseThrow();
    }

    /**
     * Draws one.
     *
     * @param listed the tightening with its peers
     * @param window the limits that it was held against
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String svg(Listed listed, Window window, String id) {
        return new TraceChart(listed, window).draw(id);
    }

    private String draw(String id) {
        var own = Plots.series(0);
        var curve = listed.outline().curve();
        for (int i = 0; i < curve.size(); i++) {
            own.add(curve.angleDeg(i) - zeroDeg, curve.torqueNm(i));
        }
        double right = Math.max(own.getMaxX(), turnLimit(window.turnDeg().high(), own.getMaxX()));
        double seated = Math.min(0, turnLimit(0, 0));
        double start = zero == Outline.Zero.ELASTIC_ORIGIN ? Math.min(0, own.getMinX()) : own.getMinX();
        double left = Math.max(start, seated - rundown() * Math.max(right - seated, 1));
        var finalBand = window.finalTorqueNm();
        double top = Math.max(own.getMaxY(), finalBand.hasHigh() ? finalBand.high() : own.getMaxY());
        double bottom = Math.min(0, own.getMinY());
        double span = Math.max(right - left, 1);
        double rise = Math.max(top - bottom, 1);
        left -= 0.03 * span;
        right += 0.08 * span;
        top += 0.1 * rise;
        var plot = Plots.empty(
                Plots.axis("angle past the " + zeroWords() + ", deg", left, right),
                Plots.axis("torque, N·m", bottom, top));
        Plots.lines(plot, peers(left), Ink.PEER, 0.8f);
        Plots.lines(plot, Plots.only(own), Ink.TRACE, 1.8f);
        addWindow(plot, left, right);
        addElasticLine(plot, top);
        addPoints(plot, 0.012 * span, 0.025 * rise);
        return Svg.of(Plots.chart(plot), WIDTH, HEIGHT, id, description());
    }

    private XYSeriesCollection peers(double left) {
        var peers = new XYSeriesCollection();
        int count = 0;
        for (var peer : listed.peers()) {
            var from = peer.zeroDeg(zero);
            if (count == MOST_PEERS || from.isEmpty()) {
                continue;
            }
            var series = Plots.series(count++);
            int n = stop(peer.curve()) + 1;
            for (int i = 0; i < n; i++) {
                double x = peer.curve().angleDeg(i) - from.getAsDouble();
                if (x >= left && (i % PEER_STEP == 0 || i == n - 1)) {
                    series.add(x, peer.curve().torqueNm(i));
                }
            }
            peers.addSeries(series);
        }
        return peers;
    }

    /** A peer is drawn up to where it turned furthest: its release would only clutter the window. */
    private static int stop(Curve curve) {
        int furthest = 0;
        for (int i = 1; i < curve.size(); i++) {
            furthest = curve.angleDeg(i) > curve.angleDeg(furthest) ? i : furthest;
        }
        return furthest;
    }

    /** The window is a box where the turn is known, else a band of torque over the whole chart. */
    private void addWindow(XYPlot plot, double left, double right) {
        var torque = window.finalTorqueNm();
        var lowTurn = turnLimit(window.turnDeg().low(), left);
        var highTurn = turnLimit(window.turnDeg().high(), right);
        if (!torque.hasLow()
                && !torque.hasHigh()
                && !window.turnDeg().hasLow()
                && !window.turnDeg().hasHigh()) {
            return;
        }
        var range = plot.getRangeAxis().getRange();
        double low = torque.hasLow() ? torque.low() : range.getLowerBound();
        double high = torque.hasHigh() ? torque.high() : range.getUpperBound();
        var fill = Ink.WINDOW.colour();
        plot.addAnnotation(new XYBoxAnnotation(
                Math.max(left, lowTurn),
                low,
                Math.min(right, highTurn),
                high,
                new BasicStroke(1f),
                fill,
                new Color(fill.getRed(), fill.getGreen(), fill.getBlue(), 26)));
        var stop = listed.judgement().signature().end().torqueNm();
        boolean above = stop.isFound() && stop.number() < low;
        plot.addAnnotation(Plots.text(
                "window",
                Math.min(right, highTurn),
                above ? high : low,
                above ? TextAnchor.BOTTOM_RIGHT : TextAnchor.TOP_RIGHT,
                Ink.WINDOW));
    }

    private double turnLimit(double limitDeg, double otherwise) {
        var snug = listed.judgement().signature().snug().angleDeg();
        return snug.isFound() && Double.isFinite(limitDeg) ? snug.number() - zeroDeg + limitDeg : otherwise;
    }

    private void addElasticLine(XYPlot plot, double top) {
        var elastic = listed.judgement().signature().elastic();
        if (!elastic.originDeg().isFound() || !elastic.torqueRateNmPerDeg().isFound()) {
            return;
        }
        double x = elastic.originDeg().number() - zeroDeg;
        double y = prevailing();
        double rate = elastic.torqueRateNmPerDeg().number();
        if (rate > 0) {
            plot.addAnnotation(Plots.line(x, y, x + (top - y) / rate, top, Ink.ELASTIC, 1f, 5, 3));
        }
    }

    private void addPoints(XYPlot plot, double dx, double dy) {
        var signature = listed.judgement().signature();
        var elastic = signature.elastic();
        if (elastic.originDeg().isFound()) {
            mark(plot, elastic.originDeg().number(), prevailing(), "origin", dx, dy, TextAnchor.BOTTOM_RIGHT);
        }
        mark(plot, signature.snug().angleDeg(), snugTorque(), "snug", -dx, dy, TextAnchor.BOTTOM_RIGHT);
        mark(
                plot,
                signature.onset().angleDeg(),
                signature.onset().torqueNm().value(),
                "onset",
                -dx,
                dy / 2,
                TextAnchor.BOTTOM_RIGHT);
        mark(
                plot,
                signature.end().angleDeg(),
                signature.end().torqueNm().value(),
                "stop",
                dx,
                0,
                TextAnchor.CENTER_LEFT);
    }

    private void mark(
            XYPlot plot, Feature angle, OptionalDouble torque, String name, double dx, double dy, TextAnchor anchor) {
        if (angle.isFound() && torque.isPresent()) {
            mark(plot, angle.number(), torque.getAsDouble(), name, dx, dy, anchor);
        }
    }

    private void mark(XYPlot plot, double angle, double torque, String name, double dx, double dy, TextAnchor anchor) {
        double x = angle - zeroDeg;
        var point = Plots.series(0);
        point.add(x, torque);
        Plots.points(plot, point, PointsRenderer.dots(6f, Ink.SIGNAL));
        var range = plot.getDomainAxis().getRange();
        boolean atLeftEdge = x < range.getLowerBound() + LABEL_SHARE * range.getLength();
        plot.addAnnotation(
                atLeftEdge
                        ? Plots.text(name, x + Math.abs(dx), torque + dy, TextAnchor.BOTTOM_LEFT, Ink.SIGNAL)
                        : Plots.text(name, x + dx, torque + dy, anchor, Ink.SIGNAL));
    }

    private double rundown() {
        boolean matters = zero == Outline.Zero.FIRST_SAMPLE
                || listed.judgement().findings().stream().anyMatch(finding -> ABOUT_RUNDOWN.contains(finding.code()));
        return matters ? LONG_RUNDOWN : USUAL_RUNDOWN;
    }

    private double prevailing() {
        return listed.judgement().signature().prevailingTorqueNm().value().orElse(0);
    }

    /** The torque drawn at the snug point: the curve's own where its angle is passed first. */
    private OptionalDouble snugTorque() {
        var snug = listed.judgement().signature().snug().angleDeg();
        var curve = listed.outline().curve();
        if (!snug.isFound()) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < curve.size(); i++) {
            if (curve.angleDeg(i) >= snug.number()) {
                return OptionalDouble.of(curve.torqueNm(i));
            }
        }
        return OptionalDouble.empty();
    }

    private String zeroWords() {
        return switch (zero) {
            case ELASTIC_ORIGIN -> "elastic origin";
            case SNUG_POINT -> "snug point";
            case FIRST_SAMPLE -> "first sample";
        };
    }

    private String description() {
        return "Torque over angle of " + listed.judgement().identity().words() + " against "
                + listed.peers().size() + " conforming peers";
    }
}
