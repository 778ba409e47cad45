package org.tautlog.intake.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.problem.Problem;

/**
 * Changes of clocks: Central Europe on 2026-03-29 at 01:00 UTC forward and on 2026-10-25 at 01:00 UTC back (Directive
 * 2000/84/EC, articles 2 and 3: the last Sunday in March and in October).
 */
class CalendarFileTest {
    private static final String THREE = """
            zone = "Europe/Berlin"
            [[shift]]
            name = "early"
            from = "06:00"
            to = "14:00"
            [[shift]]
            name = "late"
            from = "14:00"
            to = "22:00"
            [[shift]]
            name = "night"
            from = "22:00"
            to = "06:00"
            """;

    @Test
    void a_shift_of_a_day_runs_in_local_time() {
        assertEquals(
                new ShiftSpan(
                        OffsetDateTime.parse("2026-02-03T06:00+01:00"), OffsetDateTime.parse("2026-02-03T14:00+01:00")),
                span("early", "2026-02-03"));
        assertEquals(
                OffsetDateTime.parse("2026-02-04T06:00+01:00"),
                span("night", "2026-02-03").before());
    }

    @ParameterizedTest
    @CsvSource({"2026-02-03,8", "2026-03-28,7", "2026-10-24,9"})
    void the_night_in_which_clocks_change_is_an_hour_shorter_or_longer(String date, int hours) {
        var night = span("night", date);
        assertEquals(Duration.ofHours(hours), Duration.between(night.from(), night.before()));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-02-03T13:59:59+01:00,early,2026-02-03",
        "2026-02-03T13:00Z,late,2026-02-03",
        "2026-02-04T05:59+01:00,night,2026-02-03",
        "2026-03-29T05:59+02:00,night,2026-03-28",
        "2026-03-29T06:00+02:00,early,2026-03-29"
    })
    void the_shift_of_a_moment_is_the_one_that_began_last(String moment, String name, String date) {
        assertEquals(span(name, date), calendar(THREE).at(OffsetDateTime.parse(moment)));
    }

    @Test
    void between_two_shifts_the_one_before_counts() {
        var weekday = calendar(THREE.replace("to = \"22:00\"", "to = \"20:00\""));
        assertEquals(
                OffsetDateTime.parse("2026-02-03T14:00+01:00"),
                weekday.at(OffsetDateTime.parse("2026-02-03T21:00+01:00")).from());
    }

    @ParameterizedTest
    @CsvSource({"2026-03-29,2026-03-29T03:30+02:00", "2026-10-25,2026-10-25T02:30+02:00"})
    void shifts_that_change_at_half_past_two_meet_in_nights_of_that_kind_too(String date, String meeting) {
        var calendar = calendar(THREE.replace("22:00", "02:30"));
        var night = calendar.span("night", LocalDate.parse(date)).orElseThrow();
        var late = calendar.span("late", LocalDate.parse(date).minusDays(1)).orElseThrow();
        assertEquals(OffsetDateTime.parse(meeting), night.from());
        assertEquals(night.from(), late.before(), "the end of the shift before");
    }

    @ParameterizedTest
    @CsvSource({"2026-01-01", "2026-03-29", "2026-10-25", "2026-12-31"})
    void the_shifts_of_a_day_leave_no_gap_and_overlap_nowhere(String date) {
        var day = LocalDate.parse(date);
        var calendar = calendar(THREE);
        var names = List.of("early", "late", "night");
        for (int i = 0; i < 2; i++) {
            assertEquals(
                    calendar.span(names.get(i), day).orElseThrow().before(),
                    calendar.span(names.get(i + 1), day).orElseThrow().from());
        }
        assertEquals(
                calendar.span("night", day).orElseThrow().before(),
                calendar.span("early", day.plusDays(1)).orElseThrow().from());
    }

    @Test
    void every_problem_is_told_with_its_place_and_key() {
        var text = THREE.replace("Europe/Berlin", "Berlin")
                .replace("from = \"14:00\"", "from = \"2 pm\"")
                .replace("name = \"night\"", "title = \"night\"");
        var told = CalendarFile.read(text, "shifts.toml").problems().stream()
                .map(Problem::sentence)
                .toList();
        assertTrue(
                told.get(0).startsWith("shifts.toml:1:1 (zone): zone is 'Berlin'; a time zone is written as"),
                told.toString());
        assertTrue(
                told.stream().anyMatch(one -> one.contains(":8:1 (shift[2].from): from is '2 pm'")), told.toString());
        assertTrue(
                told.stream().anyMatch(one -> one.contains("(shift[3].title): 'title' is not a key")), told.toString());
    }

    @Test
    void a_calendar_without_shifts_or_with_one_name_twice_is_refused() {
        assertTrue(told("zone = \"UTC\"").contains("there is no [[shift]]"), told("zone = \"UTC\""));
        var twice = told(THREE.replace("\"late\"", "\"early\""));
        assertTrue(twice.contains("shift 'early' is there twice"), twice);
        var endless = told(THREE.replace("to = \"14:00\"", "to = \"06:00\""));
        assertTrue(endless.contains("(shift[1].to): to is 06:00 as from is"), endless);
    }

    @Test
    void no_shift_of_another_name_is_made_up() {
        assertTrue(calendar(THREE).span("noon", LocalDate.parse("2026-02-03")).isEmpty());
        assertEquals(ZoneId.of("Europe/Berlin"), calendar(THREE).zone());
    }

    private static ShiftSpan span(String name, String date) {
        return calendar(THREE).span(name, LocalDate.parse(date)).orElseThrow();
    }

    private static ShiftCalendar calendar(String text) {
        return CalendarFile.read(text, "shifts.toml").value().orElseThrow();
    }

    private static String told(String text) {
        return CalendarFile.read(text, "shifts.toml").problems().stream()
                .map(Problem::sentence)
                .toList()
                .toString();
    }
}
