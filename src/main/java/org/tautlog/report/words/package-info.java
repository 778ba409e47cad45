/**
 * How numbers, times, names and sentences are written, the same in every report.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.words.Figures} (numbers for readers),
 * {@link org.tautlog.report.words.Rounded} (numbers for programs), {@link org.tautlog.report.words.Times},
 * {@link org.tautlog.report.words.ShiftClock} (times within a shift), {@link org.tautlog.report.words.Sentence},
 * {@link org.tautlog.report.words.Word} (constants in files), {@link org.tautlog.report.words.JsonFields} (one JSON
 * object).
 *
 * <p>May import: review and below, nothing of {@code report}. Refuses to: know which report it writes for.
 */
@NullMarked
package org.tautlog.report.words;

import org.jspecify.annotations.NullMarked;
