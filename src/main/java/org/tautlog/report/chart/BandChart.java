package org.tautlog.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.tautlog.joint.study.Envelope;
import org.tautlog.joint.study.Quantity;
import org.tautlog.joint.study.Summary;
import org.tautlog.joint.window.Band;
import org.tautlog.review.WindowReview;

/** Torque or clamp load over the turn: where most drawn curves run, and their middle. */
public final class BandChart {
    private static final int WIDTH = 480;
    private static final int HEIGHT = 320;
    private static final int FILL_ALPHA = 46;
    private static final int BOX_ALPHA = 26;
    private static final double HEADROOM = 1.08;
    private static final double N_PER_KN = 1000;
    /** Where along the turn band and line bear their names. */
    private static final double NAME_AT = 0.42;

    private static final double LABEL_BELOW = 0.94;
    private static final double LABEL_RIGHT = 0.03;

    private final WindowReview review;
    private final Function<Envelope.Band, Envelope.Range> range;
    private final double unit;
    private final Quantity atEnd;
    private final String symbol;

    private BandChart(
            WindowReview review,
            Function<Envelope.Band, Envelope.Range> range,
            double unit,
            Quantity atEnd,
            String symbol) {
        this.review = review;
        this.range = range;
        this.unit = unit;
        this.atEnd = atEnd;
        this.symbol = symbol;
    }

    /**
     * Draws the clamp load.
     *
     * @param review the study
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String clampLoad(WindowReview review, String id) {
        return new BandChart(review, Envelope.Band::preloadN, N_PER_KN, Quantity.FINAL_PRELOAD, "kN")
                .draw("clamp load, kN", Band.open(), id);
    }

    /**
     * Draws the torque, with the present window at the end of the turn.
     *
     * @param review the study
     * @param id a name for the drawing's own parts, unique in its page
     * @return an SVG element
     */
    public static String torque(WindowReview review, String id) {
        var window = review.specification().window();
        return new BandChart(review, Envelope.Band::torqueNm, 1, Quantity.FINAL_TORQUE, "N·m")
                .draw("torque, N·m", window.finalTorqueNm(), id);
    }

    private String draw(String label, Band window, String id) {
        var bands = review.envelope().bands();
        double lastDeg = bands.get(bands.size() - 1).pastSnugDeg();
        double top = bands.stream().mapToDouble(this::high).max().orElse(1);
        if (window.hasHigh()) {
            top = Math.max(top, window.high());
        }
        top *= HEADROOM;
        var plot = Plots.empty(
                Plots.axis("turn of the bolt's head past the snug point, deg", 0, lastDeg), Plots.axis(label, 0, top));
        plot.addAnnotation(fill(bands));
        var middle = Plots.series(0);
        bands.forEach(band -> middle.add(band.pastSnugDeg(), range.apply(band).median() / unit));
        Plots.lines(plot, Plots.only(middle), Ink.TRACE, 1.8f);
        addTurn(plot, top);
        addNames(plot, bands);
        addWindow(plot, window, top);
        return Svg.of(Plots.chart(plot), WIDTH, HEIGHT, id, description(label));
    }

    private XYPolygonAnnotation fill(List<Envelope.Band> bands) {
        int n = bands.size();
        var corners = new double[4 * n];
        for (int i = 0; i < n; i++) {
            var up = bands.get(i);
            var down = bands.get(n - 1 - i);
            corners[2 * i] = up.pastSnugDeg();
            corners[2 * i + 1] = high(up);
            corners[2 * (n + i)] = down.pastSnugDeg();
            corners[2 * (n + i) + 1] = range.apply(down).low() / unit;
        }
        return new XYPolygonAnnotation(corners, null, null, faint(Ink.WINDOW, FILL_ALPHA));
    }

    /** Band and line say themselves what they are, and the line its value where the turn ends. */
    private void addNames(XYPlot plot, List<Envelope.Band> bands) {
        var early = bands.get((int) (NAME_AT * (bands.size() - 1)));
        var share = review.study().coverage() * 100;
        plot.addAnnotation(Plots.text(
                String.format(Locale.ROOT, "%.1f %% of curves  ", share),
                early.pastSnugDeg(),
                high(early),
                TextAnchor.BOTTOM_RIGHT,
                Ink.WINDOW));
        plot.addAnnotation(Plots.text(
                "  middle", early.pastSnugDeg(), range.apply(early).low() / unit, TextAnchor.TOP_LEFT, Ink.TRACE));
        double turnDeg = review.study().nominal().turnDeg();
        var summary = review.result().summary(atEnd);
        double endLow = bands.stream()
                .filter(band -> band.pastSnugDeg() <= turnDeg)
                .mapToDouble(band -> range.apply(band).low() / unit)
                .max()
                .orElse(0);
        plot.addAnnotation(Plots.text(
                String.format(Locale.ROOT, "%.1f %s", median(summary) / unit, symbol),
                turnDeg + LABEL_RIGHT * turnDeg,
                LABEL_BELOW * endLow,
                TextAnchor.TOP_LEFT,
                Ink.TRACE));
    }

    private static double median(Summary summary) {
        return summary.percentiles().stream()
                .filter(one -> one.percent() == 50)
                .mapToDouble(Summary.Percentile::value)
                .findFirst()
                .orElseThrow();
    }

    private void addTurn(XYPlot plot, double top) {
        double turnDeg = review.study().nominal().turnDeg();
        plot.addAnnotation(Plots.line(turnDeg, 0, turnDeg, top, Ink.FAINT, 1f, 4f, 3f));
        plot.addAnnotation(Plots.text(
                String.format(Locale.ROOT, "turn %.0f deg ", turnDeg),
                turnDeg,
                0.03 * top,
                TextAnchor.BOTTOM_RIGHT,
                Ink.FAINT));
    }

    private void addWindow(XYPlot plot, Band window, double top) {
        var turn = review.specification().window().turnDeg();
        if (!window.hasLow() || !window.hasHigh() || !turn.hasLow() || !turn.hasHigh()) {
            return;
        }
        double windUp = review.windUpDeg();
        plot.addAnnotation(new XYBoxAnnotation(
                turn.low() - windUp,
                window.low(),
                turn.high() - windUp,
                window.high(),
                new BasicStroke(1.2f),
                Ink.SIGNAL.colour(),
                faint(Ink.SIGNAL, BOX_ALPHA)));
        plot.addAnnotation(Plots.text(
                "released window ",
                turn.low() - windUp,
                Math.min(window.high(), 0.99 * top),
                TextAnchor.TOP_RIGHT,
                Ink.SIGNAL));
    }

    private double high(Envelope.Band band) {
        return range.apply(band).high() / unit;
    }

    private static Color faint(Ink ink, int alpha) {
        var colour = ink.colour();
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), alpha);
    }

    private String description(String label) {
        var bands = review.envelope().bands();
        var last = range.apply(bands.get(bands.size() - 1));
        return String.format(
                Locale.ROOT,
                "Predicted %s over the turn; at %.0f deg %.1f, from %.1f to %.1f",
                label,
                bands.get(bands.size() - 1).pastSnugDeg(),
                last.median() / unit,
                last.low() / unit,
                last.high() / unit);
    }
}
