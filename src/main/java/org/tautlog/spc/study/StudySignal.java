package org.tautlog.spc.study;

/**
 * One point that says something has changed.
 *
 * @param point which point, from 1
 * @param place where it comes from, for example {@code line 12}
 * @param panel title of the panel that shows it
 * @param value what was plotted
 * @param said what it breaks, for readers
 */
public record StudySignal(int point, String place, String panel, double value, String said) {}
