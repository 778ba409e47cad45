package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duckdb.DuckDBAppender;
import org.duckdb.DuckDBConnection;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.table.ColumnType;
import org.tautlog.archive.table.RowHash;
import org.tautlog.archive.table.Table;

/** Writes rows of the tables into Parquet files of a batch, each file sorted by serial. */
final class BatchWriter implements AutoCloseable {
    /** Rows are sorted so that a serial, or what is near to it in time, lies together; the hash makes the order total. */
    static final String ORDER = "serial, time_utc, bolt, attempt, row_sha256";

    private static final int ROWS_A_GROUP = 2048;

    /**
     * Samples repeat within a group of rows, and are packed by that. The engine sets memory for so many aside for each
     * column: a table of many columns and few rows does with as many as it has rows.
     */
    private static final int DIFFERENT_SAMPLES = 100_000;

    /** Sorting and packing a file takes the engine some 130 bytes a number: so many at once stay far below its limit. */
    private static final int MOST_NUMBERS = 3_000_000;

    /** A row without samples weighs about as much as so many numbers. */
    private static final int NUMBERS_A_ROW = 100;

    private final Path folder;
    private final String batch;
    private final int mostNumbers;
    private final DuckDBConnection duck;
    private final Map<String, DuckDBAppender> open = new HashMap<>();
    private final Map<String, List<String>> hashes = new HashMap<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<Manifest.DataFile> files = new ArrayList<>();

    BatchWriter(Path folder, String batch) throws IOException {
        this(folder, batch, MOST_NUMBERS);
    }

    BatchWriter(Path folder, String batch, int mostNumbers) throws IOException {
        this.folder = folder;
        this.batch = batch;
        this.mostNumbers = mostNumbers;
        this.duck = Duck.open(folder.resolve("spill"));
    }

    <T> void append(Table<T> table, T value) throws IOException {
        append(table, value, 0);
    }

    <T> void append(Table<T> table, T value, int samples) throws IOException {
        try {
            var appender = open.get(table.name());
            if (appender == null) {
                Duck.run(duck, table.createSql());
                appender = duck.createAppender(table.name());
                open.put(table.name(), appender);
            }
            table.append(appender, value, batch);
            hashes.computeIfAbsent(table.name(), name -> new ArrayList<>()).add(table.hash(value));
        } catch (SQLException e) {
            throw failed(e);
        }
        if (numbers.merge(table.name(), samples + NUMBERS_A_ROW, Integer::sum) > mostNumbers) {
            flush(table);
        }
    }

    /** Writes the rows appended so far into a file of their own, to give their memory back. */
    void flush(Table<?> table) throws IOException {
        var appender = open.remove(table.name());
        if (appender == null) {
            return;
        }
        numbers.remove(table.name());
        try {
            appender.close();
            write(table, table.name());
            Duck.run(duck, "DROP TABLE " + table.name());
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    /** Writes the rows that other batches have of a table into as few files as the engine's memory allows. */
    void copy(Table<?> table, List<Snapshot.Batch> from) throws IOException {
        var sources = new ArrayList<Path>();
        from.forEach(other -> other.manifest().files().stream()
                .filter(file -> file.table().equals(table.name()))
                .forEach(file -> sources.add(other.folder().resolve(file.name()))));
        if (sources.isEmpty()) {
            return;
        }
        var rows = Duck.rowsOf(sources);
        try {
            if (!ofEngines(table)) {
                write(table, rows);
                return;
            }
            for (var serials : chunks(table, rows)) {
                write(table, rows + " WHERE serial BETWEEN " + serials);
            }
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    /** Ranges of serials, as SQL, each of which is few enough rows to be sorted at once. */
    private List<String> chunks(Table<?> table, String rows) throws SQLException {
        var weight = (isSampled(table) ? "sum(samples) + " : "") + NUMBERS_A_ROW + " * count(*)";
        var chunks = new ArrayList<String>();
        try (var statement = duck.createStatement();
                var result = statement.executeQuery("SELECT serial, CAST(" + weight + " AS BIGINT) FROM " + rows
                        + " GROUP BY serial ORDER BY serial")) {
            long open = 0;
            var first = "";
            var last = "";
            while (result.next()) {
                if (open > 0 && open + result.getLong(2) > mostNumbers) {
                    chunks.add(Duck.text(first) + " AND " + Duck.text(last));
                    open = 0;
                }
                last = result.getString(1);
                first = open == 0 ? last : first;
                open += result.getLong(2);
            }
            chunks.add(Duck.text(first) + " AND " + Duck.text(last));
        }
        return chunks;
    }

    List<Manifest.Part> parts() {
        return hashes.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> new Manifest.Part(
                        entry.getKey(), batch, entry.getValue().size(), RowHash.ofRows(entry.getValue())))
                .toList();
    }

    List<Manifest.DataFile> files() {
        return List.copyOf(files);
    }

    @Override
    public void close() throws IOException {
        try {
            for (var appender : open.values()) {
                appender.close();
            }
            duck.close();
        } catch (SQLException e) {
            throw failed(e);
        } finally {
            Disk.delete(folder.resolve("spill"));
        }
    }

    private void write(Table<?> table, String rows) throws SQLException, IOException {
        var of =
                files.stream().filter(file -> file.table().equals(table.name())).count();
        var name = table.name() + "-" + (of + 1) + ".parquet";
        var path = folder.resolve(name);
        var ofEngines =
                table.columns().stream().anyMatch(column -> column.name().equals("serial"));
        Duck.run(
                duck,
                "COPY (SELECT * FROM " + rows + " ORDER BY " + (ofEngines ? ORDER : "file, line, row_sha256") + ") TO "
                        + Duck.text(path.toAbsolutePath().toString()) + format(table));
        var bounds = ofEngines
                ? "count(*), min(serial), max(serial), min(time_utc), max(time_utc)"
                : "count(*), NULL::VARCHAR, NULL::VARCHAR, NULL::TIMESTAMP, NULL::TIMESTAMP";
        try (var statement = duck.createStatement();
                var result = statement.executeQuery("SELECT " + bounds + " FROM " + Duck.rowsOf(List.of(path)))) {
            result.next();
            files.add(new Manifest.DataFile(
                    name,
                    table.name(),
                    result.getInt(1),
                    Files.size(path),
                    Disk.sha256(path),
                    orEmpty(result.getString(2)),
                    orEmpty(result.getString(3)),
                    orEmpty(result.getObject(4, LocalDateTime.class)),
                    orEmpty(result.getObject(5, LocalDateTime.class))));
        }
    }

    private static String format(Table<?> table) {
        return " (FORMAT parquet, COMPRESSION zstd, ROW_GROUP_SIZE " + ROWS_A_GROUP + ", DICTIONARY_SIZE_LIMIT "
                + (isSampled(table) ? DIFFERENT_SAMPLES : ROWS_A_GROUP) + ", KV_METADATA {tautlog_table: "
                + Duck.text(table.name()) + ", tautlog_schema: '" + Table.SCHEMA_VERSION + "'})";
    }

    private static boolean isSampled(Table<?> table) {
        return table.columns().stream().anyMatch(column -> column.type() == ColumnType.SAMPLES);
    }

    private static boolean ofEngines(Table<?> table) {
        return table.columns().stream().anyMatch(column -> column.name().equals("serial"));
    }

    private IOException failed(SQLException e) {
        return new IOException("the batch cannot be written into " + folder + ": " + e.getMessage(), e);
    }

    private static String orEmpty(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }
}
