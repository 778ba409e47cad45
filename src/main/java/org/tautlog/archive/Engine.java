package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.duckdb.DuckDBConnection;
import org.jspecify.annotations.Nullable;

/** Asks the embedded engine, which starts with the first question. */
final class Engine implements AutoCloseable {
    private final Path spill;
    private @Nullable DuckDBConnection duck;

    Engine(Path spill) {
        this.spill = spill;
    }

    static Engine ofReader() {
        return new Engine(Path.of(System.getProperty("java.io.tmpdir")).resolve(Disk.uniqueName("tautlog-spill-")));
    }

    /** Takes one row. */
    @FunctionalInterface
    interface RowTaker {
        void take(ResultSet row) throws SQLException;
    }

    void query(String sql, List<Object> values, RowTaker taker) throws SQLException, IOException {
        if (duck == null) {
            duck = Duck.open(spill);
        }
        try (var statement = duck.prepareStatement(sql)) {
            for (int i = 0; i < values.size(); i++) {
                statement.setObject(i + 1, values.get(i));
            }
            try (var result = statement.executeQuery()) {
                while (result.next()) {
                    taker.take(result);
                }
            }
        }
    }

    @Override
    public void close() throws IOException {
        try {
            if (duck != null) {
                duck.close();
            }
        } catch (SQLException e) {
            throw new IOException("the archive's engine does not stop: " + e.getMessage(), e);
        }
    }
}
