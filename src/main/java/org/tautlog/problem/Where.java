package org.tautlog.problem;

import java.util.Objects;

/**
 * The place of a problem: a file, a line and column in it, a key. Parts that do not apply are empty or 0.
 *
 * @param file the file as its user named it, with {@code !} before an entry of an archive; empty where there is none
 * @param line 1-based line; 0 where no line is meant
 * @param column 1-based column of characters; 0 where no column is meant
 * @param key the key, column name or option concerned; empty where there is none
 */
public record Where(String file, int line, int column, String key) {
    public Where {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(key, "key");
        if (line < 0 || column < 0) {
            throw new IllegalArgumentException(
                    "line " + line + ", column " + column + ": a place counts from 1; 0 means none");
        }
    }

    /**
     * A whole file.
     *
     * @param file the file as its user named it
     * @return the place
     */
    public static Where file(String file) {
        return new Where(file, 0, 0, "");
    }

    /**
     * A line of a file.
     *
     * @param file the file as its user named it
     * @param line 1-based line
     * @return the place
     */
    public static Where line(String file, int line) {
        return new Where(file, line, 0, "");
    }

    /**
     * The same place, narrowed to a key or column name.
     *
     * @param name the key
     * @return the narrowed place
     */
    public Where at(String name) {
        return new Where(file, line, column, name);
    }

    /** {@return the place as a person reads it, for example {@code shift.csv:12:4 (torque)}} */
    @Override
    public String toString() {
        var text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line);
        }
        if (column > 0) {
            text.append(':').append(column);
        }
        if (!key.isEmpty()) {
            text.append(text.isEmpty() ? "" : " ").append('(').append(key).append(')');
        }
        return text.toString();
    }
}
