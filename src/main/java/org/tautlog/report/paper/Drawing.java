package org.tautlog.report.paper;

import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.svgsupport.BatikSVGImage;
import com.openhtmltopdf.svgsupport.PDFTranscoder;
import com.openhtmltopdf.svgsupport.PDFTranscoder.OpenHtmlFontResolver;
import java.util.Set;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.TextPainter;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.w3c.dom.Element;

/**
 * One SVG element of a page. The library takes its size from the style and draws it with text turned into outlines; here
 * it is drawn by a painter that keeps text.
 */
final class Drawing extends BatikSVGImage {
    private static final String SVG = SVGDOMImplementation.SVG_NAMESPACE_URI;
    private final Element element;
    private final KeepsText transcoder;

    Drawing(
            Element element,
            Box box,
            double width,
            double height,
            double dotsPerPixel,
            CssContext style,
            TextPainter text) {
        super(
                element,
                box,
                width,
                height,
                CalculatedStyle.getCSSMaxWidth(style, box),
                CalculatedStyle.getCSSMaxHeight(style, box),
                dotsPerPixel,
                style);
        this.element = element;
        float pixelsWide = (float) (getIntrinsicWidth() / dotsPerPixel);
        float pixelsHigh = (float) (getIntrinsicHeight() / dotsPerPixel);
        transcoder = new KeepsText(box, dotsPerPixel, pixelsWide, pixelsHigh, text);
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, pixelsWide);
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_HEIGHT, pixelsHigh);
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
        var document = SVGDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        var root = document.getDocumentElement();
        var rules = document.createElementNS(SVG, "style");
        rules.setTextContent(context.getCss().getCSSForAllDescendants(element));
        root.appendChild(rules);
        for (var child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            root.appendChild(document.importNode(child, true));
        }
        var attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            root.setAttribute(
                    attributes.item(i).getNodeName(), attributes.item(i).getNodeValue());
        }
        transcoder.setRenderingParameters(device, context, x, y, new OpenHtmlFontResolver(), null);
        try {
            transcoder.transcode(new TranscoderInput(document), null);
        } catch (TranscoderException e) {
            if (e.getException() instanceof BridgeException) {
                return; // it names something outside of the page: left out
            }
            throw new IllegalStateException("a drawing of the page cannot be drawn", e);
        }
    }

    private static final class KeepsText extends PDFTranscoder {
        private final TextPainter text;

        KeepsText(Box box, double dotsPerPixel, double width, double height, TextPainter text) {
            super(box, dotsPerPixel, width, height);
            this.text = text;
            setSecurityOptions(false, false, Set.of());
        }

        @Override
        protected BridgeContext createBridgeContext(String svgVersion) {
            var context = super.createBridgeContext(svgVersion);
            context.setTextPainter(text);
            return context;
        }
    }
}
