package org.tautlog.report.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.AttributedCharacterIterator;
import javax.imageio.ImageIO;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/** Paints charts on white, each ink in its own colour instead of the stand-in that drawings for pages carry. */
final class Png extends AbstractGraphics2D {
    private static final int SCALE = 2;

    private final Graphics2D paper;

    private Png(Graphics2D paper, GraphicContext state) {
        super(false);
        this.paper = paper;
        this.gc = state;
    }

    static byte[] of(Sheet sheet) {
        var image = new BufferedImage(sheet.width() * SCALE, sheet.height() * SCALE, BufferedImage.TYPE_INT_RGB);
        var paper = image.createGraphics();
        paper.setColor(Color.WHITE);
        paper.fillRect(0, 0, image.getWidth(), image.getHeight());
        paper.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        paper.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        for (var placed : sheet.charts()) {
            var pen = new Png(paper, new GraphicContext(AffineTransform.getScaleInstance(SCALE, SCALE)));
            var box = new Rectangle2D.Double(placed.x(), placed.y(), placed.width(), placed.height());
            placed.chart().draw(pen, box);
        }
        paper.dispose();
        var bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private Graphics2D prepared() {
        paper.setTransform(new AffineTransform());
        paper.setClip(null);
        paper.setTransform(getTransform());
        if (getClip() != null) {
            paper.clip(getClip());
        }
        paper.setPaint(getPaint() instanceof Color colour ? Ink.real(colour) : getPaint());
        paper.setStroke(getStroke());
        paper.setFont(getFont());
        return paper;
    }

    @Override
    public void draw(Shape shape) {
        prepared().draw(shape);
    }

    @Override
    public void fill(Shape shape) {
        prepared().fill(shape);
    }

    @Override
    public void drawString(String text, float x, float y) {
        prepared().drawString(text, x, y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        prepared().drawString(text, x, y);
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return paper.getFontMetrics(font);
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return paper.getDeviceConfiguration();
    }

    @Override
    public Graphics create() {
        return new Png(paper, (GraphicContext) gc.clone());
    }

    @Override
    public void dispose() {
        // The paper outlives every pen.
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        return prepared().drawImage(image, x, y, observer);
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        return prepared().drawImage(image, x, y, width, height, observer);
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform transform) {
        prepared().drawRenderedImage(image, transform);
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform transform) {
        prepared().drawRenderableImage(image, transform);
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        prepared().copyArea(x, y, width, height, dx, dy);
    }

    @Override
    public void setXORMode(Color colour) {
        throw new UnsupportedOperationException("no chart paints by exclusion");
    }
}
