package org.tautlog.archive.table;

import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.duckdb.DuckDBAppender;
import org.jspecify.annotations.Nullable;

/**
 * A table: its columns, and how a record is made of a row again. Beside the columns named here each row holds
 * {@code batch}, the batch that brought it in, and {@code row_sha256}, see {@link RowHash}.
 *
 * @param <T> what one row holds
 */
public final class Table<T> {
    /** Counts the versions of all tables together; a program reads every version up to its own. */
    public static final int SCHEMA_VERSION = 2;

    private final String name;
    private final List<Column<T>> columns;
    private final List<Column<T>> byName;
    private final List<byte[]> names;
    private final Map<String, ColumnType> types;
    private final Function<Row, T> record;

    Table(String name, List<Column<T>> columns, Function<Row, T> record) {
        this.name = name;
        this.columns = List.copyOf(columns);
        this.byName =
                columns.stream().sorted(Comparator.comparing(Column::name)).toList();
        this.names = byName.stream()
                .map(column -> column.name().getBytes(StandardCharsets.UTF_8))
                .toList();
        this.types = columns.stream().collect(Collectors.toUnmodifiableMap(Column::name, Column::type));
        this.record = record;
    }

    /** {@return every table of an archive} */
    public static List<Table<?>> all() {
        return List.of(TraceTable.table(), JudgementTable.table(), ProblemTable.table());
    }

    /** {@return the table's name; its files are named after it} */
    public String name() {
        return name;
    }

    /** {@return the columns, in their order in the file} */
    public List<Column<T>> columns() {
        return columns;
    }

    /** {@return the SQL that makes an empty table of this kind} */
    public String createSql() {
        return columns.stream()
                .map(column -> column.name() + " " + column.type().sql())
                .collect(Collectors.joining(
                        ", ", "CREATE TABLE " + name + " (", ", batch VARCHAR, row_sha256 VARCHAR)"));
    }

    /**
     * The hash of a record's row.
     *
     * @param value the record
     * @return the hash in lower-case hex
     */
    public String hash(T value) {
        return hash(column -> column.value().apply(value));
    }

    /**
     * Appends a record to an open table of this kind.
     *
     * @param row the table's appender
     * @param value the record
     * @param batch the batch that brings it in
     * @throws SQLException where the store refuses
     */
    public void append(DuckDBAppender row, T value, String batch) throws SQLException {
        row.beginRow();
        for (var column : columns) {
            var cell = column.value().apply(value);
            if (cell == null) {
                row.appendNull();
            } else {
                column.type().append(row, cell);
            }
        }
        row.append(batch).append(hash(value)).endRow();
    }

    /** {@return what reads the rows of one result of this table} */
    public Rows rows() {
        return new Rows(types);
    }

    /**
     * The record of a row, if the row is as it was kept.
     *
     * @param row the row
     * @return the record with its batch and hash
     * @throws IllegalArgumentException where the row's hash does not fit its columns, or they make no record
     */
    public Kept<T> kept(Row row) {
        var stated = row.text("row_sha256");
        var actual = hash(column -> row.cell(column.name()));
        if (!actual.equals(stated)) {
            throw new IllegalArgumentException(
                    "the row does not fit its hash: row_sha256 is '" + stated + "', its columns give " + actual);
        }
        return new Kept<>(record.apply(row), row.text("batch"), stated);
    }

    static <T> List<Column<T>> columns(List<List<Column<T>>> groups) {
        return groups.stream().flatMap(List::stream).toList();
    }

    private String hash(Function<Column<T>, @Nullable Object> cells) {
        var hash = new RowHash();
        for (int i = 0; i < names.size(); i++) {
            var column = byName.get(i);
            var cell = cells.apply(column);
            if (cell != null) {
                hash.text(names.get(i));
                column.type().feed(hash, cell);
            }
        }
        return hash.hex();
    }
}
