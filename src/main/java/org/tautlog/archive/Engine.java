package org.tautlog.archive;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.duckdb.DuckDBConnection;

/** Asks the embedded engine, which starts with the first question at the latest. */
final class Engine implements AutoCloseable {
    private final FutureTask<DuckDBConnection> start;
    private boolean begun;

    Engine(Path spill) {
        this(() -> Duck.open(spill));
    }

    private Engine(Callable<DuckDBConnection> open) {
        start = new FutureTask<>(open);
    }

    static Engine ofReader() {
        return new Engine(newSpill());
    }

    /** One that reads file after file, beside others of its kind: one thread holds one group of rows. */
    static Engine ofChecker(String memory) {
        var spill = newSpill();
        return new Engine(() -> Duck.open(spill, 1, memory));
    }

    /** Whether a question failed for want of memory, which says nothing of the files. */
    static boolean isFull(SQLException e) {
        return e.getMessage() != null && e.getMessage().contains("Out of Memory");
    }

    private static Path newSpill() {
        return Path.of(System.getProperty("java.io.tmpdir")).resolve(Disk.uniqueName("tautlog-spill-"));
    }

    /** Takes one row. */
    @FunctionalInterface
    interface RowTaker {
        void take(ResultSet row) throws SQLException;
    }

    /** Lets it start while the caller does something else. */
    void startMeanwhile() {
        begun = true;
        var thread = new Thread(start, "archive engine");
        thread.setDaemon(true);
        thread.start();
    }

    void query(String sql, List<Object> values, RowTaker taker) throws SQLException, IOException {
        try (var statement = duck().prepareStatement(sql)) {
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

    /** Starts it here, unless it is starting elsewhere; waits until it has started. */
    private DuckDBConnection duck() throws IOException {
        begun = true;
        start.run();
        try {
            return start.get();
        } catch (ExecutionException e) {
            throw e.getCause() instanceof IOException cause ? cause : new IOException(e.getMessage(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped while the archive's engine was starting");
        }
    }

    @Override
    public void close() throws IOException {
        try {
            if (begun) {
                duck().close();
            }
        } catch (SQLException e) {
            throw new IOException("the archive's engine does not stop: " + e.getMessage(), e);
        }
    }
}
