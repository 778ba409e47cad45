package org.tautlog.report.chart;

import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.text.TextUtils;

/** Draws a chart as an SVG element that can stand in a page beside others: own ids, text as text, no colours of its own. */
final class Svg {
    private static final int DECIMALS = 1;

    static {
        TextUtils.setUseDrawRotatedStringWorkaround(false); // it writes upright titles as shapes
    }

    private Svg() {}

    static String of(JFreeChart chart, int width, int height, String id, String description) {
        return of(Sheet.empty(width).below(height, chart), id, description);
    }

    /** A document of its own: on white, in fixed colours, as any program opens it. */
    static String standing(Sheet sheet, String description) {
        var svg = Ink.fixed(of(sheet, "chart", description));
        int root = svg.indexOf('>') + 1;
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg.substring(0, root)
                + "<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\" stroke=\"none\"/>" + svg.substring(root)
                + "\n";
    }

    private static String of(Sheet sheet, String id, String description) {
        var document = GenericDOMImplementation.getDOMImplementation()
                .createDocument("http://www.w3.org/2000/svg", "svg", null);
        var context = SVGGeneratorContext.createDefault(document);
        context.setComment("");
        context.setPrecision(DECIMALS);
        context.setEmbeddedFontsOn(false);
        context.setIDGenerator(new SVGIDGenerator() {
            private int count;

            @Override
            public String generateID(String prefix) {
                return id + '-' + count++;
            }
        });
        var graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new Dimension(sheet.width(), sheet.height()));
        for (var placed : sheet.charts()) {
            var box = new Rectangle2D.Double(placed.x(), placed.y(), placed.width(), placed.height());
            placed.chart().draw(graphics, box);
        }
        var root = graphics.getRoot();
        root.setAttributeNS(null, "viewBox", "0 0 " + sheet.width() + ' ' + sheet.height());
        root.setAttributeNS(null, "role", "img");
        root.setAttributeNS(null, "aria-label", description);
        var text = new StringWriter();
        try {
            graphics.stream(root, text, true, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Ink.named(tidied(text.toString(), id));
    }

    /** Without prolog, defaults and the blanks between elements: half the size, and fit to stand inside HTML. */
    private static String tidied(String svg, String id) {
        return svg.substring(svg.indexOf("<svg"))
                .replaceAll("\\s*\\R\\s*(?=/?>)", "")
                .replaceAll(">\\s+<", "><")
                .replace("<defs id=\"genericDefs\"/>", "")
                .replace(" clip-path:url(#" + id + "-0);", "")
                .replace("clip-path:url(#" + id + "-0); ", "")
                .replace(" text-rendering:optimizeLegibility;", "")
                .replace(" xml:space=\"preserve\"", "")
                .strip();
    }
}
