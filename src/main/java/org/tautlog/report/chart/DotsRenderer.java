package org.tautlog.report.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.AbstractXYItemRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.data.xy.XYDataset;

/** Draws all points of a series as one path of round dots, a tenth of the size of one shape each. */
final class DotsRenderer extends AbstractXYItemRenderer {
    private static final long serialVersionUID = 1L;

    private final float size;

    DotsRenderer(float size, Ink ink) {
        this.size = size;
        setDefaultPaint(ink.colour());
        setAutoPopulateSeriesPaint(false);
    }

    @Override
    public void drawItem(
            Graphics2D graphics,
            XYItemRendererState state,
            Rectangle2D area,
            PlotRenderingInfo info,
            XYPlot plot,
            ValueAxis domain,
            ValueAxis range,
            XYDataset data,
            int series,
            int item,
            CrosshairState crosshair,
            int pass) {
        if (item != data.getItemCount(series) - 1) {
            return;
        }
        var dots = new Path2D.Double();
        for (int i = 0; i <= item; i++) {
            double x = domain.valueToJava2D(data.getXValue(series, i), area, plot.getDomainAxisEdge());
            double y = range.valueToJava2D(data.getYValue(series, i), area, plot.getRangeAxisEdge());
            dots.moveTo(x, y);
            dots.lineTo(x, y);
        }
        graphics.setPaint(getItemPaint(series, item));
        graphics.setStroke(new BasicStroke(size, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        graphics.draw(dots);
    }
}
