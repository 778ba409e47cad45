package org.tautlog.intake.calendar;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Optional;
import java.util.function.Function;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.intake.toml.TomlFile;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.ProblemCode;

/**
 * The shift calendar, in TOML. A key that is unknown, missing or makes no sense is a problem with its line and column.
 *
 * <pre>
 * zone = "Europe/Berlin"       # a region, so that summer time is known
 *
 * [[shift]]
 * name = "early"
 * from = "06:00"               # local time
 * to   = "14:00"
 *
 * [[shift]]
 * name = "night"
 * from = "22:00"
 * to   = "06:00"               # of the next day
 * </pre>
 */
public final class CalendarFile {
    private CalendarFile() {}

    /**
     * Reads a calendar.
     *
     * @param file the file, UTF-8
     * @return the calendar, or every problem that the file has
     */
    public static Outcome<ShiftCalendar> read(Path file) {
        return TomlFile.read(file, CalendarFile::read);
    }

    /**
     * Reads the text of a calendar.
     *
     * @param text the text of the file
     * @param name the file's name for problems
     * @return the calendar, or every problem that the text has
     */
    public static Outcome<ShiftCalendar> read(String text, String name) {
        return TomlFile.read(text, name, CalendarFile::read);
    }

    private static Optional<ShiftCalendar> read(StrictTable root) {
        var zone = root.parsed(
                "zone",
                text -> sensible(
                        ZoneId::of, text, "zone is '" + text + "'; a time zone is written as Europe/Berlin or UTC"));
        var shifts = new ArrayList<PlannedShift>();
        for (var table : root.sections("shift")) {
            shift(table).ifPresent(shifts::add);
        }
        if (!root.has("shift")) {
            root.problem(ProblemCode.MISSING_KEY, "shift", "there is no [[shift]]", "", "add one a shift");
        }
        return root.build(() -> new ShiftCalendar(zone.orElseThrow(), shifts));
    }

    private static Optional<PlannedShift> shift(StrictTable table) {
        var name = table.text("name");
        var from = time(table, "from");
        var to = time(table, "to");
        return table.build(() -> new PlannedShift(name, from.orElseThrow(), to.orElseThrow()));
    }

    private static Optional<LocalTime> time(StrictTable table, String key) {
        return table.parsed(
                key,
                text -> sensible(LocalTime::parse, text, key + " is '" + text + "'; a local time is written as 06:00"));
    }

    private static <T> T sensible(Function<String, T> parser, String text, String refusal) {
        try {
            return parser.apply(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(refusal, e);
        }
    }
}
