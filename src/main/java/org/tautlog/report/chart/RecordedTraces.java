package org.tautlog.report.chart;

import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.title.TextTitle;
import org.tautlog.trace.Trace;

/** Traces as they were recorded, each in a panel of its own, with nothing read into them. */
public final class RecordedTraces {
    private static final int WIDTH = 760;
    private static final int HEIGHT = 260;
    private static final double MARGIN = 0.04;

    private RecordedTraces() {}

    /**
     * Draws traces.
     *
     * @param traces the traces, at least one
     * @return an SVG document
     */
    public static String svg(List<Trace> traces) {
        if (traces.isEmpty()) {
            throw new IllegalArgumentException("there is no trace to draw; at least 1 is needed");
        }
        var sheet = Sheet.empty(WIDTH);
        for (var trace : traces) {
            sheet = sheet.below(HEIGHT, panel(trace));
        }
        return Svg.standing(sheet, "The first traces as recorded");
    }

    private static JFreeChart panel(Trace trace) {
        var curve = trace.curve();
        var line = Plots.series(0);
        for (int i = 0; i < curve.size(); i++) {
            line.add(curve.angleDeg(i), curve.torqueNm(i));
        }
        double across = Math.max(1e-6, line.getMaxX() - line.getMinX()) * MARGIN;
        double low = Math.min(0, line.getMinY());
        double up = Math.max(1e-6, line.getMaxY() - low) * MARGIN;
        var plot = Plots.empty(
                Plots.axis("angle, deg", line.getMinX() - across, line.getMaxX() + across),
                Plots.axis("torque, N·m", low - up, line.getMaxY() + up));
        Plots.lines(plot, Plots.only(line), Ink.TRACE, 1.2f);
        var chart = Plots.chart(plot);
        var title = new TextTitle(trace.identity().words() + ": " + curve.size() + " samples");
        title.setPaint(Ink.TEXT.colour());
        chart.setTitle(title);
        return chart;
    }
}
