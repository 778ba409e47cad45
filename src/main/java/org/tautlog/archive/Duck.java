package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Properties;
import java.util.stream.Collectors;
import org.duckdb.DuckDBConnection;

/** The embedded engine that writes and queries Parquet. Opening it unpacks native code: only when it is needed. */
final class Duck {
    private Duck() {}

    /** An engine with nothing in it, that fetches nothing from anywhere and spills, if it must, into the folder given. */
    static DuckDBConnection open(Path spill) throws IOException {
        return open(spill, 2, "1GB");
    }

    static DuckDBConnection open(Path spill, int threads, String memory) throws IOException {
        var properties = new Properties();
        properties.setProperty("jdbc_stream_results", "true");
        try {
            var connection =
                    DriverManager.getConnection("jdbc:duckdb:", properties).unwrap(DuckDBConnection.class);
            for (var setting : List.of(
                    "autoinstall_known_extensions = false",
                    "autoload_known_extensions = false",
                    "memory_limit = " + text(memory),
                    "threads = " + threads,
                    "temp_directory = " + text(spill.toString()),
                    "lock_configuration = true")) {
                run(connection, "SET " + setting);
            }
            return connection;
        } catch (SQLException e) {
            throw new IOException("the archive's engine does not start: " + e.getMessage(), e);
        }
    }

    static void run(DuckDBConnection connection, String sql) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    /** A text as SQL writes it; a character of number 0, which would end the statement, as a call. */
    static String text(String value) {
        return "'" + value.replace("'", "''").replace("\0", "' || chr(0) || '") + "'";
    }

    /** The rows of files, whose names are names and never patterns; columns that came later are empty in older files. */
    static String rowsOf(Collection<Path> files) {
        return files.stream()
                .map(file -> text(file.toAbsolutePath().toString().replaceAll("([\\[*?])", "[$1]")))
                .collect(Collectors.joining(", ", "read_parquet([", "], union_by_name = true)"));
    }
}
