package org.tautlog.report.study;

/**
 * A group or stream that no limits watched: what is not watched cannot be in control.
 *
 * @param name its name
 * @param reason why nobody watched it
 */
public record Unwatched(String name, String reason) {}
