package org.tautlog.cli.terminal;

import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A moment on the command line: date, time and offset, none of them guessed. */
public final class Moment implements ITypeConverter<OffsetDateTime> {
    private static final String LIKE = "2026-03-17T09:10+01:00";

    /** For the command line, which asks it. */
    public Moment() {}

    @Override
    public OffsetDateTime convert(String text) {
        try {
            return OffsetDateTime.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("'" + Terminal.harmless(text) + "' " + missing(text));
        }
    }

    private static String missing(String text) {
        if (text.matches("[\\d-]+T[\\d:.]+")) {
            return "has no offset from UTC; add that of the plant then, as in " + LIKE;
        }
        return text.matches("[\\d-]+")
                ? "has no time of day and no offset from UTC; add both, as in " + LIKE
                : "is no moment (ISO 8601); write it as in " + LIKE;
    }
}
