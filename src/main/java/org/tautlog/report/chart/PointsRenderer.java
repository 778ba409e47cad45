package org.tautlog.report.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.AbstractXYItemRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.data.xy.XYDataset;

/**
 * Draws all points of a series as one path, a tenth of the size of one shape each. What is not a plain dot has a shape of
 * its own, so that it tells itself apart without its colour.
 */
final class PointsRenderer extends AbstractXYItemRenderer {
    private static final long serialVersionUID = 1L;

    private final Path2D.Double shape;
    private final float width;
    private final boolean filled;

    private PointsRenderer(Path2D.Double shape, float width, boolean filled, Ink ink) {
        this.shape = shape;
        this.width = width;
        this.filled = filled;
        setDefaultPaint(ink.colour());
        setAutoPopulateSeriesPaint(false);
    }

    /** Round dots: lines of no length with round ends. */
    static PointsRenderer dots(float size, Ink ink) {
        return new PointsRenderer(new Path2D.Double(new Line2D.Double(0, 0, 0, 0)), size, false, ink);
    }

    /** A ring: the limits do not rest on the point. */
    static PointsRenderer ring() {
        return new PointsRenderer(
                new Path2D.Double(new Ellipse2D.Double(-2.6, -2.6, 5.2, 5.2)), 1.2f, false, Ink.TRACE);
    }

    /** A hollow square round each point: it breaks a rule. */
    static PointsRenderer square() {
        return new PointsRenderer(new Path2D.Double(new Rectangle2D.Double(-3.5, -3.5, 7, 7)), 1.2f, false, Ink.SIGNAL);
    }

    /** A cross on each point: it bears a fault of its own and is set aside. */
    static PointsRenderer cross() {
        var cross = new Path2D.Double(new Line2D.Double(-3, -3, 3, 3));
        cross.append(new Line2D.Double(-3, 3, 3, -3), false);
        return new PointsRenderer(cross, 1.1f, false, Ink.FAINT);
    }

    /** A triangle below the upper edge that points up and out of the scale. */
    static PointsRenderer aboveScale() {
        return new PointsRenderer(triangle(7), 1f, true, Ink.SIGNAL);
    }

    /** A triangle above the lower edge that points down and out of the scale. */
    static PointsRenderer belowScale() {
        return new PointsRenderer(triangle(-7), 1f, true, Ink.SIGNAL);
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
        var points = new Path2D.Double();
        for (int i = 0; i <= item; i++) {
            double x = domain.valueToJava2D(data.getXValue(series, i), area, plot.getDomainAxisEdge());
            double y = range.valueToJava2D(data.getYValue(series, i), area, plot.getRangeAxisEdge());
            points.append(AffineTransform.getTranslateInstance(x, y).createTransformedShape(shape), false);
        }
        graphics.setPaint(getItemPaint(series, item));
        graphics.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        if (filled) {
            graphics.fill(points);
        } else {
            graphics.draw(points);
        }
    }

    private static Path2D.Double triangle(double base) {
        var path = new Path2D.Double();
        path.moveTo(0, 0);
        path.lineTo(-4.5, base);
        path.lineTo(4.5, base);
        path.closePath();
        return path;
    }
}
