package org.tautlog.report.chart;

import org.tautlog.report.paper.Unprintable;

/** Words as they are drawn: what prints nothing or turns the text around stands as its number, as in {@code [U+202E]}. */
final class Plain {
    private Plain() {}

    static String of(String words) {
        return Unprintable.numbered(words, Plain::prints);
    }

    private static boolean prints(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL -> point == '\n';
            case Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
