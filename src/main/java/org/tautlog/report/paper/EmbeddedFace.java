package org.tautlog.report.paper;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.OptionalDouble;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/** A font in which text of a document's drawings is written; as much of it as is used goes into the document. */
final class EmbeddedFace extends PdfBoxGraphics2DFontTextDrawer {
    private static final int MISSING = 0;

    private final TrueTypeFont font;
    private final CmapLookup points;
    private @Nullable PDFont inDocument;

    EmbeddedFace(TrueTypeFont font) {
        this.font = font;
        try {
            points = font.getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How wide a text is in units of the font's size; empty where the font lacks one of its characters. */
    OptionalDouble width(String text) {
        try {
            double width = 0;
            for (int point : text.codePoints().toArray()) {
                int glyph = points.getGlyphId(point);
                if (glyph == MISSING) {
                    return OptionalDouble.empty();
                }
                width += font.getAdvanceWidth(glyph);
            }
            return OptionalDouble.of(width / font.getUnitsPerEm());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    protected PDFont mapFont(Font asked, IFontTextDrawerEnv page) throws IOException {
        var known = inDocument;
        if (known == null) {
            known = PDType0Font.load(page.getDocument(), font, true);
            inDocument = known;
        }
        return known;
    }

    @Override
    public void close() {
        super.close();
        try {
            font.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
