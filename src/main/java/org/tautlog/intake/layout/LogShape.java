package org.tautlog.intake.layout;

import java.util.Locale;

/** How traces lie in an exported log. */
public enum LogShape {
    /** One trace in each file: lines of {@code key: value} that say what it is of, then the table of its samples. */
    FILE_PER_TRACE,
    /** Many traces in one table, one sample a row; the rows of a trace lie together and repeat what it is of. */
    LONG_TABLE,
    /** One trace a row; each sample column holds a whole list in one cell. */
    ROW_PER_TRACE;

    /** {@return the word of this shape in lower case with hyphens, for example {@code long-table}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
