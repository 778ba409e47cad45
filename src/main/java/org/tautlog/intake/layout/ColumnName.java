package org.tautlog.intake.layout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.trace.AngleUnit;

/**
 * A column's header, cut into its name and its unit: {@code Torque (Nm)}, {@code Drehmoment [Nm]}, {@code M / Nm},
 * {@code torque_Nm}; {@code Revolutions} is both.
 *
 * @param plain the name in lower case without anything but letters and digits
 * @param unit the text where a unit stands; empty where there is none
 */
public record ColumnName(String plain, String unit) {
    private static final Pattern BRACKETED = Pattern.compile("(.*?)\\s*(?:\\(([^()]*)\\)|\\[([^\\[\\]]*)\\])\\s*");
    private static final Pattern BEHIND_IN = Pattern.compile("(.*\\S)\\s+in\\s+(\\S+)");
    private static final Pattern BEHIND_SIGN = Pattern.compile("(.*\\S)(?:\\s+/\\s*|_|\\s+)(\\S+)");

    /** Without one of these, or room, no pattern matches; nearly all cells that are looked at are numbers. */
    private static final String PARTING = "([_";

    /**
     * Cuts a header.
     *
     * @param header the header as the file writes it
     * @return its name and unit
     */
    public static ColumnName of(String header) {
        if (!mayHoldUnit(header)) {
            return new ColumnName(
                    plain(header), AngleUnit.parse(header).equals(Optional.of(AngleUnit.TURN)) ? header : "");
        }
        var bracketed = BRACKETED.matcher(header);
        if (header.length() < 200 && bracketed.matches()) {
            var unit = bracketed.group(2) == null ? bracketed.group(3) : bracketed.group(2);
            return new ColumnName(plain(bracketed.group(1)), unit.strip());
        }
        for (var pattern : List.of(BEHIND_IN, BEHIND_SIGN)) {
            var behind = pattern.matcher(header);
            if (header.length() < 200 && behind.matches() && isUnit(behind.group(2))) {
                return new ColumnName(plain(behind.group(1)), behind.group(2));
            }
        }
        return new ColumnName(plain(header), "");
    }

    /** Whether something in a header may part a name from a unit. */
    static boolean mayHoldUnit(String header) {
        int at = 0;
        while (at < header.length()
                && PARTING.indexOf(header.charAt(at)) < 0
                && !Character.isWhitespace(header.charAt(at))) {
            at++;
        }
        return at < header.length();
    }

    /**
     * A name without what exports write in different ways.
     *
     * @param name any name
     * @return it in lower case without anything but letters and digits
     */
    public static String plain(String name) {
        var plain = new StringBuilder();
        var lower = name.toLowerCase(Locale.ROOT);
        for (int at = 0; at < lower.length(); at += Character.charCount(lower.codePointAt(at))) {
            if (Character.isLetterOrDigit(lower.codePointAt(at))) {
                plain.appendCodePoint(lower.codePointAt(at));
            }
        }
        return plain.toString();
    }

    static boolean isUnit(String text) {
        return quantityOf(text).isPresent();
    }

    static Optional<Quantity> quantityOf(String unit) {
        for (var quantity : Quantity.values()) {
            if (quantity.factor(unit).isPresent()) {
                return Optional.of(quantity);
            }
        }
        return Optional.empty();
    }
}
