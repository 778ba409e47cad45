package org.tautlog.cli.shift;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.stream.Collectors;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.calendar.CalendarFile;
import org.tautlog.intake.calendar.PlannedShift;
import org.tautlog.intake.calendar.ShiftSpan;

/** A shift as a user names it: {@code early 2026-02-03}. */
final class CalendarShift {
    private CalendarShift() {}

    /** The shift that runs now, or where none runs the last one. */
    static ShiftSpan now(Path file) {
        return Refusal.orRefuse(CalendarFile.read(file)).at(OffsetDateTime.now(ZoneId.systemDefault()));
    }

    static ShiftSpan of(Path file, String shift) {
        var calendar = Refusal.orRefuse(CalendarFile.read(file));
        int gap = shift.strip().lastIndexOf(' ');
        var name = shift.strip().substring(0, Math.max(0, gap)).strip();
        return calendar.span(name, date(shift.strip().substring(gap + 1), shift))
                .orElseThrow(() -> Refusal.wrongUse(file + " knows no shift '" + Terminal.harmless(name)
                        + "'; there are "
                        + calendar.shifts().stream()
                                .map(PlannedShift::name)
                                .map(Terminal::harmless)
                                .collect(Collectors.joining(", "))));
    }

    private static LocalDate date(String text, String shift) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw Refusal.wrongUse("--shift is '" + Terminal.harmless(shift)
                    + "'; a shift is named with the day on which it begins, as \"early 2026-02-03\"");
        }
    }
}
