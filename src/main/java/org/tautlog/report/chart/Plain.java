package org.tautlog.report.chart;

import java.util.Locale;

/** Words as they are drawn: what prints nothing or turns the text around stands as its number, as in {@code [U+202E]}. */
final class Plain {
    private Plain() {}

    static String of(String words) {
        if (words.codePoints().allMatch(Plain::prints)) {
            return words;
        }
        var plain = new StringBuilder();
        words.codePoints().forEach(point -> {
            if (prints(point)) {
                plain.appendCodePoint(point);
            } else {
                plain.append(String.format(Locale.ROOT, "[U+%04X]", point));
            }
        });
        return plain.toString();
    }

    private static boolean prints(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL -> point == '\n';
            case Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
