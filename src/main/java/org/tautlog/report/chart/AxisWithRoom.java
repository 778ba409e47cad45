package org.tautlog.report.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueTick;
import org.jfree.chart.ui.RectangleEdge;

/** An axis without ticks beyond a last value, where only words stand. */
final class AxisWithRoom extends NumberAxis {
    private static final long serialVersionUID = 1L;

    private final double last;

    AxisWithRoom(String label, double last) {
        super(label);
        this.last = last;
    }

    @Override
    public List<ValueTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        List<?> ticks = super.refreshTicks(g, state, area, edge);
        return ticks.stream()
                .map(ValueTick.class::cast)
                .filter(tick -> tick.getValue() <= last)
                .toList();
    }
}
