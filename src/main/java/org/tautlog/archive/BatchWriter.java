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
import org.tautlog.archive.table.RowHash;
import org.tautlog.archive.table.Table;

/** Writes rows of the tables into Parquet files of a batch, each file sorted by serial. */
final class BatchWriter implements AutoCloseable {
    /** Rows are sorted so that a serial, or what is near to it in time, lies together; the hash makes the order total. */
    static final String ORDER = "serial, time_utc, bolt, attempt, row_sha256";

    private static final String FORMAT =
            "FORMAT parquet, COMPRESSION zstd, DICTIONARY_SIZE_LIMIT 100000, ROW_GROUP_SIZE ";
    private static final int ROWS_A_GROUP = 2048;

    private final Path folder;
    private final String batch;
    private final DuckDBConnection duck;
    private final Map<String, DuckDBAppender> open = new HashMap<>();
    private final Map<String, List<String>> hashes = new HashMap<>();
    private final List<Manifest.DataFile> files = new ArrayList<>();

    BatchWriter(Path folder, String batch) throws IOException {
        this.folder = folder;
        this.batch = batch;
        this.duck = Duck.open(folder.resolve("spill"));
    }

    <T> void append(Table<T> table, T value) throws IOException {
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
    }

    /** Writes the rows appended so far into a file of their own, to give their memory back. */
    void flush(Table<?> table) throws IOException {
        var appender = open.remove(table.name());
        if (appender == null) {
            return;
        }
        try {
            appender.close();
            write(table, table.name());
            Duck.run(duck, "DROP TABLE " + table.name());
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    /** Writes the rows that other batches have of a table into one file. */
    void copy(Table<?> table, List<Snapshot.Batch> from) throws IOException {
        var sources = new ArrayList<Path>();
        from.forEach(other -> other.manifest().files().stream()
                .filter(file -> file.table().equals(table.name()))
                .forEach(file -> sources.add(other.folder().resolve(file.name()))));
        if (sources.isEmpty()) {
            return;
        }
        try {
            write(table, Duck.rowsOf(sources));
        } catch (SQLException e) {
            throw failed(e);
        }
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
                        + Duck.text(path.toAbsolutePath().toString()) + " (" + FORMAT + ROWS_A_GROUP
                        + ", KV_METADATA {tautlog_table: " + Duck.text(table.name()) + ", tautlog_schema: '"
                        + Table.SCHEMA_VERSION + "'})");
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

    private IOException failed(SQLException e) {
        return new IOException("the batch cannot be written into " + folder + ": " + e.getMessage(), e);
    }

    private static String orEmpty(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }
}
