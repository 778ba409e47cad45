package org.tautlog.report.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The fonts that go into every PDF: Caladea (SIL Open Font License 1.1, its text lies beside the files) and, for what it
 * lacks, the Liberation Sans that PDFBox brings.
 */
final class Fonts {
    private static final int NORMAL = 400;
    private static final int BOLD = 700;
    private static final String FOLDER = "/org/tautlog/report/fonts/";

    private static final Face SANS = new Face(
            PDDocument.class,
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf",
            "Liberation Sans",
            NORMAL,
            FontStyle.NORMAL);

    private static final Face STRONG =
            new Face(Fonts.class, FOLDER + "Caladea-Bold.ttf", "Caladea", BOLD, FontStyle.NORMAL);

    private static final List<Face> FACES = List.of(
            new Face(Fonts.class, FOLDER + "Caladea-Regular.ttf", "Caladea", NORMAL, FontStyle.NORMAL),
            STRONG,
            new Face(Fonts.class, FOLDER + "Caladea-Italic.ttf", "Caladea", NORMAL, FontStyle.ITALIC),
            new Face(Fonts.class, FOLDER + "Caladea-BoldItalic.ttf", "Caladea", BOLD, FontStyle.ITALIC),
            SANS);

    private record Face(Class<?> beside, String file, String family, int weight, FontStyle style) {
        InputStream open() {
            var stream = beside.getResourceAsStream(file);
            if (stream == null) {
                throw new IllegalStateException("the program was packed without " + file);
            }
            return stream;
        }

        /** Without ligatures: a reader that searches for “finding” finds no glyph that stands for two letters. */
        TrueTypeFont read() {
            try (var file = open()) {
                var font = new TTFParser().parse(new RandomAccessReadBuffer(file));
                font.setEnableGsub(false);
                return font;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private Fonts() {}

    /** Loaded here and not by the library, which has no switch for ligatures. */
    static void embed(PdfRendererBuilder builder, PDDocument document) throws IOException {
        for (var face : FACES) {
            var font = face.read();
            document.registerTrueTypeFontForClosing(font);
            builder.useFont(
                    new PDFontSupplier(PDType0Font.load(document, font, true)),
                    face.family(),
                    face.weight(),
                    face.style(),
                    true);
        }
    }

    /** What can be printed: the faces of a family hold the same points. */
    static Glyphs glyphs() {
        var upright = new ArrayList<CmapLookup>();
        for (var face : FACES) {
            if (face.weight() == NORMAL && face.style() == FontStyle.NORMAL) {
                upright.add(lookup(face));
            }
        }
        return new Glyphs(upright);
    }

    /** The upright face without serifs, to be closed once what uses it is saved. */
    static TrueTypeFont sans() {
        return SANS.read();
    }

    /** The bold face, to be closed likewise. */
    static TrueTypeFont bold() {
        return STRONG.read();
    }

    private static CmapLookup lookup(Face face) {
        try (var font = face.read()) {
            return font.getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
