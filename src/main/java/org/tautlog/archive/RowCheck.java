package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.archive.table.RowHash;
import org.tautlog.archive.table.Table;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Reads every row of a batch and holds it against its hash, and all of them against the digests of the manifest. */
final class RowCheck implements AutoCloseable {
    private static final String MEMORY = "512MB";

    private final Engine engine;
    private long rows;

    RowCheck() {
        this(Engine.ofChecker(MEMORY));
    }

    RowCheck(Engine engine) {
        this.engine = engine;
    }

    List<Problem> check(Path folder, Manifest manifest) throws IOException {
        var problems = new ArrayList<Problem>();
        for (var table : Table.all()) {
            check(folder, manifest, table, problems);
        }
        return problems;
    }

    long rows() {
        return rows;
    }

    @Override
    public void close() throws IOException {
        engine.close();
    }

    private <T> void check(Path folder, Manifest manifest, Table<T> table, List<Problem> problems) throws IOException {
        var found = new HashMap<String, List<String>>();
        for (var file : manifest.files()) {
            if (file.table().equals(table.name())) {
                check(folder.resolve(file.name()), table, found, problems);
            }
        }
        for (var part : manifest.parts()) {
            if (part.table().equals(table.name())) {
                var hashes = found.getOrDefault(part.batch(), List.of());
                if (hashes.size() != part.rows() || !RowHash.ofRows(hashes).equals(part.digest())) {
                    problems.add(problem(
                            folder,
                            table.name(),
                            "of batch " + part.batch() + " " + hashes.size() + " rows of " + table.name()
                                    + " are there, and they are not the " + part.rows() + " that were kept"));
                }
                found.remove(part.batch());
            }
        }
        found.keySet()
                .forEach(batch -> problems.add(
                        problem(folder, table.name(), "rows of batch '" + batch + "' are there that were never kept")));
    }

    private <T> void check(Path file, Table<T> table, Map<String, List<String>> found, List<Problem> problems)
            throws IOException {
        var read = table.rows();
        try {
            engine.query("SELECT * FROM " + Duck.rowsOf(List.of(file)), List.of(), result -> {
                rows++;
                var row = read.read(result);
                try {
                    var kept = table.kept(row);
                    found.computeIfAbsent(kept.batch(), batch -> new ArrayList<>())
                            .add(kept.sha256());
                } catch (IllegalArgumentException e) {
                    problems.add(problem(
                            file.resolveSibling(""),
                            file.getFileName().toString(),
                            "a row of serial '" + row.text("serial") + "', bolt '" + row.text("bolt")
                                    + "' was altered: " + e.getMessage()));
                }
            });
        } catch (SQLException e) {
            if (Engine.isFull(e)) {
                throw new IOException(file + " does not fit into the engine's memory: " + e.getMessage(), e);
            }
            problems.add(problem(
                    file.resolveSibling(""), file.getFileName().toString(), "the file cannot be read as Parquet"));
        }
    }

    private static Problem problem(Path folder, String name, String what) {
        return new Problem(
                ProblemCode.ALTERED,
                Where.file(ArchiveFolder.BATCHES + "/" + folder.getFileName() + "/" + name),
                what,
                "",
                "copy it again from where it is whole");
    }
}
