package org.tautlog.archive.table;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One column of a table.
 *
 * @param <T> what one row of the table holds
 * @param name the column's name, with its unit where it has one
 * @param type how it is stored
 * @param value takes the column's value out of a record; null where there is none
 */
public record Column<T>(String name, ColumnType type, Function<T, @Nullable Object> value) {
    static <T> Column<T> text(String name, Function<T, @Nullable Object> value) {
        return new Column<>(name, ColumnType.TEXT, value);
    }

    static <T> Column<T> whole(String name, Function<T, @Nullable Object> value) {
        return new Column<>(name, ColumnType.WHOLE, value);
    }

    static <T> Column<T> number(String name, Function<T, @Nullable Object> value) {
        return new Column<>(name, ColumnType.NUMBER, value);
    }

    static <T> Column<T> flag(String name, Function<T, @Nullable Object> value) {
        return new Column<>(name, ColumnType.FLAG, value);
    }
}
