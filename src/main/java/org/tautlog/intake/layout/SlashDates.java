package org.tautlog.intake.layout;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates with slashes, or hyphens, that do not begin with the year. Which number is the day is told where one is above 12, and never
 * guessed: 03/02/2026 is another day on either side of the ocean.
 */
final class SlashDates {
    private static final Pattern FORM = Pattern.compile(
            "(\\d{1,2})([/-])(\\d{1,2})\\2(\\d{4}|(?<=/)\\d{2})([ T,]*)(\\d{1,2}:\\d{2})?(:\\d{2})?([.,]\\d{1,9})?( ?[AaPp][Mm])?");

    private static final int MONTHS = 12;

    /** The first of the times that holds a date of this kind. */
    private final String example;

    private final String dayFirst;
    private final String monthFirst;

    private SlashDates(Matcher seen) {
        example = seen.group();
        var sign = seen.group(2);
        var rest = sign + (seen.group(4).length() == 4 ? "uuuu" : "uu") + timeForm(seen);
        dayFirst = "d" + sign + "M" + rest;
        monthFirst = "M" + sign + "d" + rest;
    }

    private static String timeForm(Matcher seen) {
        boolean halves = seen.group(9) != null;
        var fraction = seen.group(8) == null
                ? ""
                : seen.group(8).charAt(0) + "S".repeat(seen.group(8).length() - 1);
        var between = seen.group(5).replace("T", "'T'");
        return seen.group(6) == null
                ? between
                : between + (halves ? "h" : "H") + ":mm" + (seen.group(7) == null ? "" : ":ss") + fraction
                        + (halves ? seen.group(9).startsWith(" ") ? " a" : "a" : "");
    }

    /** The lines of a layout file that say how such dates are written; none where none of the times holds one. */
    static Optional<String> lines(List<String> times) {
        var dates = times.stream().map(FORM::matcher).filter(Matcher::matches).toList();
        if (dates.isEmpty()) {
            return Optional.empty();
        }
        var form = new SlashDates(dates.get(0));
        var day = above(dates, 1);
        var month = above(dates, 3);
        if (day.isPresent() == month.isPresent()) {
            return Optional.of(form.ambiguous(day.isPresent()));
        }
        return Optional.of(
                day.isPresent()
                        ? stated(form.dayFirst, "day", day.get().group())
                        : stated(form.monthFirst, "month", month.orElseThrow().group()));
    }

    private static String stated(String format, String first, String because) {
        return "format = \"" + format + "\"   # the " + first + " comes first, as " + because
                + " shows: there are 12 months";
    }

    private static Optional<Matcher> above(List<Matcher> dates, int group) {
        return dates.stream()
                .filter(date -> Integer.parseInt(date.group(group)) > MONTHS)
                .findFirst();
    }

    private String ambiguous(boolean both) {
        return "# AMBIGUOUS: "
                + (both ? "day and month change places among the dates" : example + " names no day above 12")
                + ", so nothing is assumed and these times are not read until you keep one of\n"
                + "# format = \"" + dayFirst + "\"   # the day comes first\n"
                + "# format = \"" + monthFirst + "\"   # the month comes first";
    }
}
