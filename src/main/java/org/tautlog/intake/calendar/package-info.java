/**
 * When the plant's shifts run, as the plant states it.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.calendar.CalendarFile},
 * {@link org.tautlog.intake.calendar.ShiftCalendar}, {@link org.tautlog.intake.calendar.PlannedShift},
 * {@link org.tautlog.intake.calendar.ShiftSpan}.
 *
 * <p>May import: problem, intake.toml. Refuses to: guess a zone.
 */
@NullMarked
package org.tautlog.intake.calendar;

import org.jspecify.annotations.NullMarked;
