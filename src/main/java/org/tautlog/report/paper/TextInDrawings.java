package org.tautlog.report.paper;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import java.util.List;
import org.apache.batik.bridge.StrokingTextPainter;
import org.apache.batik.gvt.text.TextPaintInfo;

/**
 * Writes the text of drawings as text, so that it can be searched and copied. A drawing was laid out with the widths of
 * this computer's font, so each run is stretched to the width it had there. What the embedded fonts lack, type that
 * is outlined or runs from right to left is drawn as shapes.
 */
final class TextInDrawings extends StrokingTextPainter {
    private final EmbeddedFace upright;
    private final EmbeddedFace bold;

    TextInDrawings(EmbeddedFace upright, EmbeddedFace bold) {
        this.upright = upright;
        this.bold = bold;
    }

    @Override
    protected void paintTextRuns(@SuppressWarnings("rawtypes") List runs, Graphics2D graphics) { // the library's own
        for (var each : runs) {
            var run = (TextRun) each;
            if (!(graphics instanceof PdfBoxGraphics2D page) || !written(run, page)) {
                run.getLayout().draw(graphics);
            }
        }
    }

    private boolean written(TextRun run, PdfBoxGraphics2D page) {
        var marks = run.getACI();
        var text = text(marks);
        var font = isBold(marks) ? bold : upright;
        var width = font.width(text);
        if (width.isEmpty()
                || width.getAsDouble() == 0
                || !(marks.getAttribute(PAINT_INFO) instanceof TextPaintInfo look)
                || !(marks.getAttribute(TextAttribute.SIZE) instanceof Float size)
                || run.getBidiLevel() % 2 != 0
                || look.fillPaint == null
                || look.strokePaint != null) {
            return false;
        }
        var layout = run.getLayout();
        var graphics = page.create();
        graphics.setFontTextDrawer(font);
        graphics.setPaint(look.fillPaint);
        graphics.translate(layout.getOffset().getX(), layout.getOffset().getY());
        graphics.scale(layout.getAdvance2D().getX() / (size * width.getAsDouble()), 1);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont(size));
        graphics.drawString(text, 0, 0);
        graphics.dispose();
        return true;
    }

    private static boolean isBold(AttributedCharacterIterator marks) {
        return marks.getAttribute(TextAttribute.WEIGHT) instanceof Float weight && weight > TextAttribute.WEIGHT_MEDIUM;
    }

    /** All characters of a run; it stands at its first one again, where the look is asked for. */
    private static String text(AttributedCharacterIterator marks) {
        var text = new StringBuilder();
        for (char c = marks.first(); c != CharacterIterator.DONE; c = marks.next()) {
            text.append(c);
        }
        marks.first();
        return text.toString();
    }
}
