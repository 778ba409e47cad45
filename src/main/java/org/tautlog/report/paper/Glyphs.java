package org.tautlog.report.paper;

import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;

/**
 * What the embedded fonts can print. Anything else, and whatever prints nothing or turns the text around, is replaced by
 * its number, as in {@code [U+5F15]}: two serials that differ never look alike.
 */
final class Glyphs {
    private static final int MISSING = 0;
    private static final int SOFT_HYPHEN = 0xAD;

    private final List<CmapLookup> fonts;

    Glyphs(List<CmapLookup> fonts) {
        this.fonts = List.copyOf(fonts);
    }

    String printable(String text) {
        return Unprintable.numbered(text, this::prints);
    }

    private boolean prints(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL -> point == '\n' || point == '\t' || point == '\r';
            case Character.FORMAT -> point == SOFT_HYPHEN;
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> fonts.stream().anyMatch(font -> font.getGlyphId(point) != MISSING);
        };
    }
}
