package org.tautlog.intake.layout;

/** Where the value of an identity field comes from. */
public sealed interface Origin {
    /**
     * A column of the table.
     *
     * @param name the column's header as the file writes it
     */
    record Column(String name) implements Origin {}

    /**
     * A line of {@code key: value} above the table.
     *
     * @param key the key before the colon, case aside
     */
    record HeaderLine(String key) implements Origin {}

    /**
     * A named group of the layout's pattern for file names.
     *
     * @param group the group's name
     */
    record FileName(String group) implements Origin {}

    /**
     * The same value for every trace.
     *
     * @param value the value
     */
    record Fixed(String value) implements Origin {}
}
