package org.tautlog.report.paper;

import java.util.Locale;
import java.util.function.IntPredicate;

/** Writes what cannot be printed as its number, as in {@code [U+202E]}: two names that differ never look alike. */
public final class Unprintable {
    private Unprintable() {}

    /**
     * A text that can be printed.
     *
     * @param text any text
     * @param prints whether a code point prints as itself
     * @return the text, each code point that does not print as {@code [U+...]}
     */
    public static String numbered(String text, IntPredicate prints) {
        if (text.codePoints().allMatch(prints)) {
            return text;
        }
        var plain = new StringBuilder();
        text.codePoints().forEach(point -> {
            if (prints.test(point)) {
                plain.appendCodePoint(point);
            } else {
                plain.append(String.format(Locale.ROOT, "[U+%04X]", point));
            }
        });
        return plain.toString();
    }
}
