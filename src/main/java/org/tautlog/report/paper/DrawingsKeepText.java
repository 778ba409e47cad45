package org.tautlog.report.paper;

import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer.SVGImage;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import org.w3c.dom.Element;

/** Draws the SVG of a page so that its text stays text; nothing runs and nothing is fetched. */
final class DrawingsKeepText extends BatikSVGDrawer {
    private final EmbeddedFace upright = new EmbeddedFace(Fonts.sans());
    private final EmbeddedFace bold = new EmbeddedFace(Fonts.bold());
    private final TextInDrawings text = new TextInDrawings(upright, bold);

    DrawingsKeepText() {
        super(SvgScriptMode.SECURE, SvgExternalResourceMode.SECURE);
    }

    @Override
    public SVGImage buildSVGImage(
            Element drawing, Box box, CssContext style, double width, double height, double dotsPerPixel) {
        return new Drawing(drawing, box, width, height, dotsPerPixel, style, text);
    }

    @Override
    public void close() {
        super.close();
        upright.close();
        bold.close();
    }
}
