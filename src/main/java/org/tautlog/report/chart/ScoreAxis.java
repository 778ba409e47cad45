package org.tautlog.report.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.ValueTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis with ticks at stated places only, each with its own words. */
final class ScoreAxis extends NumberAxis {
    private static final long serialVersionUID = 1L;

    private final transient Map<Double, String> ticks;

    ScoreAxis(String label, Map<Double, String> ticks) {
        super(label);
        this.ticks = ticks;
    }

    @Override
    public List<ValueTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        boolean upright = RectangleEdge.isLeftOrRight(edge);
        return ticks.entrySet().stream()
                .filter(tick -> getRange().contains(tick.getKey()))
                .<ValueTick>map(tick -> new NumberTick(
                        tick.getKey(),
                        tick.getValue(),
                        upright ? TextAnchor.CENTER_RIGHT : TextAnchor.TOP_CENTER,
                        TextAnchor.CENTER,
                        0))
                .toList();
    }
}
