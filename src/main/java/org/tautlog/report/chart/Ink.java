package org.tautlog.report.chart;

import java.awt.Color;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The inks of a chart. Each is drawn in a colour that stands for it alone, and the finished drawing names the page's custom
 * property in its place, so that light, dark and print styles recolour a chart as they do text.
 */
enum Ink {
    TEXT(1, "#1f262b"),
    FAINT(2, "#6a7178"),
    RULE(3, "#d8d4c9"),
    TRACE(4, "#1f262b"),
    PEER(5, "#9aa5ad"),
    WINDOW(6, "#2f6f8f"),
    SIGNAL(7, "#b4431c"),
    ELASTIC(8, "#8a6a14");

    private static final Pattern NAMED = Pattern.compile("var\\(--ink-[a-z]+,(#[0-9a-f]{6})\\)");
    private static final int GREEN = 254;
    private static final int BLUE = 253;

    private final int red;
    private final String fallback;

    Ink(int red, String fallback) {
        this.red = red;
        this.fallback = fallback;
    }

    Color colour() {
        return new Color(red, GREEN, BLUE);
    }

    /** The colour that a stand-in means where no page's style decides; any other colour is itself. */
    static Color real(Color standIn) {
        return standIn.getGreen() == GREEN && standIn.getBlue() == BLUE
                ? Arrays.stream(values())
                        .filter(ink -> ink.red == standIn.getRed())
                        .findFirst()
                        .map(ink -> Color.decode(ink.fallback))
                        .map(own -> new Color(own.getRed(), own.getGreen(), own.getBlue(), standIn.getAlpha()))
                        .orElse(standIn)
                : standIn;
    }

    /** The drawing with each ink in its own colour, for programs that know no custom properties. */
    static String fixed(String svg) {
        return NAMED.matcher(svg).replaceAll("$1");
    }

    static String named(String svg) {
        var text = svg;
        for (var ink : values()) {
            text = text.replace(
                    "rgb(" + ink.red + ',' + GREEN + ',' + BLUE + ')',
                    "var(--ink-" + ink.name().toLowerCase(Locale.ROOT) + ',' + ink.fallback + ')');
        }
        return text;
    }
}
