package org.tautlog.intake.calendar;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The shifts of every day, in the plant's local time.
 *
 * @param zone the plant's time zone
 * @param shifts the shifts, each with a name of its own; at least one
 */
public record ShiftCalendar(ZoneId zone, List<PlannedShift> shifts) {
    public ShiftCalendar {
        Objects.requireNonNull(zone, "zone");
        shifts = List.copyOf(shifts);
        if (shifts.isEmpty()) {
            throw new IllegalArgumentException("shift is missing; a calendar has at least 1");
        }
        var names = new HashSet<String>();
        for (var shift : shifts) {
            if (!names.add(shift.name())) {
                throw new IllegalArgumentException(
                        "shift '" + shift.name() + "' is there twice; each has its own name");
            }
        }
    }

    /**
     * A shift of one day.
     *
     * <p>Where clocks go forward, a local time that does not exist that day stands for the moment as late after the last
     * one that did (02:30 becomes 03:30); where they go back, a time that exists twice stands for the first. Both hold for
     * ends and beginnings alike, so that a shift always ends where the next one begins.
     *
     * @param name its name
     * @param date the day on which it begins
     * @return when it runs; empty where no shift has that name
     */
    public Optional<ShiftSpan> span(String name, LocalDate date) {
        return shifts.stream()
                .filter(shift -> shift.name().equals(name))
                .findFirst()
                .map(shift -> new ShiftSpan(
                        at(date, shift.from()), at(shift.overMidnight() ? date.plusDays(1) : date, shift.to())));
    }

    /**
     * The shift that runs at a moment.
     *
     * @param moment the moment
     * @return the shift that began last; where none runs, the one before
     */
    public ShiftSpan at(OffsetDateTime moment) {
        var today = moment.atZoneSameInstant(zone).toLocalDate();
        return Stream.of(today.minusDays(1), today)
                .flatMap(day ->
                        shifts.stream().map(shift -> span(shift.name(), day).orElseThrow()))
                .filter(span -> !span.from().isAfter(moment))
                .max(Comparator.comparing(span -> span.from().toInstant()))
                .orElseThrow();
    }

    private OffsetDateTime at(LocalDate date, LocalTime time) {
        return ZonedDateTime.of(date, time, zone).toOffsetDateTime();
    }
}
