package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.tautlog.archive.ledger.Ledger;
import org.tautlog.archive.table.Kept;
import org.tautlog.archive.table.Row;
import org.tautlog.archive.table.Table;
import org.tautlog.archive.table.TraceTable;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * Runs a query over the files that count at that moment. Where a merge takes files away meanwhile it asks again; where a
 * file is damaged it leaves that file out and says so.
 */
final class RowReader implements AutoCloseable {
    private static final int MOST_TRIES = 50;

    private final ArchiveFolder archive;
    private final BatchReader batches;
    private final Engine engine = Engine.ofReader();

    RowReader(ArchiveFolder archive) {
        this.archive = archive;
        this.batches = new BatchReader(archive);
    }

    private final Set<Path> asKept = new HashSet<>();

    void startMeanwhile() {
        engine.startMeanwhile();
    }

    /** What the archive holds now. */
    Snapshot snapshot() throws IOException {
        return Snapshot.of(archive, batches);
    }

    /** What the chain says now. */
    Ledger.Reading ledger() throws IOException {
        return batches.ledger();
    }

    <T> Outcome<List<Kept<T>>> all(Table<T> table, Condition condition, String order) throws IOException {
        var answer = answer(table.name(), condition, (files, problems) -> {
            var found = new ArrayList<Kept<T>>();
            run(table, files, condition, order, (row, kept) -> found.add(kept), problems);
            return found;
        });
        return Outcome.of(List.copyOf(answer.value().orElse(List.of())), answer.problems());
    }

    /** Hands rows out as they come; where a merge makes it ask again, none is handed out twice. */
    <T> List<Problem> each(Table<T> table, Consumer<Kept<T>> consumer) throws IOException {
        var given = new HashSet<String>();
        return answer(table.name(), new Condition(), (files, problems) -> {
                    run(
                            table,
                            files,
                            new Condition(),
                            "",
                            (row, kept) -> {
                                if (given.add(kept.batch() + kept.sha256())) {
                                    consumer.accept(kept);
                                }
                            },
                            problems);
                    return List.of();
                })
                .problems();
    }

    /**
     * Takes columns of rows into a result, which is begun anew where a merge makes it ask again. Rows of files that are by
     * their hashes as they were kept are not hashed once more; if any file is not, each row is read whole and held against
     * its own hash.
     */
    <T, A> Outcome<A> fold(
            Table<T> table,
            List<String> columns,
            Condition condition,
            String order,
            Supplier<A> start,
            BiConsumer<A, Row> step)
            throws IOException {
        var answer = answer(table.name(), condition, (files, problems) -> {
            var result = start.get();
            if (areAsKept(files)) {
                var sql = "SELECT " + String.join(", ", columns) + " FROM " + Duck.rowsOf(files.keySet())
                        + condition.sql() + " ORDER BY " + order;
                var rows = table.rows();
                engine.query(sql, condition.values(), found -> take(table, rows.read(found), step, result, problems));
            } else {
                run(table, files, condition, order, (row, kept) -> take(table, row, step, result, problems), problems);
            }
            return List.of(result);
        });
        return Outcome.of(
                answer.value().stream().flatMap(List::stream).findFirst().orElseGet(start), answer.problems());
    }

    private static <A> void take(Table<?> table, Row row, BiConsumer<A, Row> step, A result, List<Problem> problems) {
        try {
            step.accept(result, row);
        } catch (IllegalArgumentException e) {
            problems.add(altered(table, row.text("batch"), row.text("serial"), e));
        }
    }

    private boolean areAsKept(Map<Path, String> files) throws IOException {
        for (var file : files.entrySet()) {
            if (!asKept.contains(file.getKey())) {
                if (!Disk.sha256(file.getKey()).equals(file.getValue())) {
                    return false;
                }
                asKept.add(file.getKey());
            }
        }
        return true;
    }

    Outcome<List<String>> texts(String select, String end, List<Object> values) throws IOException {
        var answer = answer(TraceTable.table().name(), new Condition(), (files, problems) -> {
            var found = new ArrayList<String>();
            engine.query(
                    select + " FROM " + Duck.rowsOf(files.keySet()) + end, values, row -> found.add(row.getString(1)));
            return found;
        });
        return Outcome.of(List.copyOf(answer.value().orElse(List.of())), answer.problems());
    }

    @Override
    public void close() throws IOException {
        engine.close();
    }

    /** A question to files, each with its hash. */
    private interface Question<R> {
        R ask(Map<Path, String> files, List<Problem> problems) throws SQLException, IOException;
    }

    private <R> Outcome<List<R>> answer(String table, Condition condition, Question<List<R>> question)
            throws IOException {
        Set<Path> damaged = new HashSet<>();
        for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
            var snapshot = snapshot();
            var problems = new ArrayList<>(snapshot.problems());
            damaged.forEach(file -> problems.add(damaged(file)));
            var files = files(snapshot, table, condition);
            files.keySet().removeAll(damaged);
            if (files.isEmpty()) {
                return Outcome.of(List.of(), problems);
            }
            try {
                return Outcome.of(question.ask(files, problems), problems);
            } catch (SQLException e) {
                if (Engine.isFull(e)) {
                    throw new IOException("the answer does not fit into the engine's memory: " + e.getMessage(), e);
                }
                if (!files(snapshot(), table, condition).keySet().containsAll(files.keySet())) {
                    continue;
                }
                if (!findDamaged(files.keySet(), damaged)) {
                    throw new IOException("the archive cannot be queried: " + e.getMessage(), e);
                }
            }
        }
        throw new IOException("the archive " + archive.root() + " changed faster than it could be read");
    }

    private boolean findDamaged(Set<Path> files, Set<Path> damaged) throws IOException {
        int before = damaged.size();
        for (var file : files) {
            try {
                engine.query("SELECT count(COLUMNS(*)) FROM " + Duck.rowsOf(List.of(file)), List.of(), row -> {});
            } catch (SQLException e) {
                damaged.add(file);
            }
        }
        return damaged.size() > before;
    }

    private Problem damaged(Path file) {
        return new Problem(
                ProblemCode.ALTERED,
                Where.file(archive.root().relativize(file).toString()),
                "the file cannot be read as Parquet; its rows are left out",
                "",
                "copy it again from where it is whole");
    }

    private static Map<Path, String> files(Snapshot snapshot, String table, Condition condition) {
        var files = new LinkedHashMap<Path, String>();
        snapshot.batches()
                .forEach(batch -> batch.manifest().files().stream()
                        .filter(file -> file.table().equals(table) && condition.mayBeIn(file))
                        .forEach(file -> files.put(batch.folder().resolve(file.name()), file.sha256())));
        return files;
    }

    private <T> void run(
            Table<T> table,
            Map<Path, String> files,
            Condition condition,
            String order,
            BiConsumer<Row, Kept<T>> consumer,
            List<Problem> problems)
            throws SQLException, IOException {
        var sql = "SELECT * FROM " + Duck.rowsOf(files.keySet()) + condition.sql()
                + (order.isEmpty() ? "" : " ORDER BY " + order);
        var rows = table.rows();
        engine.query(sql, condition.values(), result -> {
            var row = rows.read(result);
            Kept<T> kept;
            try {
                kept = table.kept(row);
            } catch (IllegalArgumentException e) {
                problems.add(altered(table, row.text("batch"), row.text("serial"), e));
                return;
            }
            consumer.accept(row, kept);
        });
    }

    static Problem altered(Table<?> table, String batch, String serial, IllegalArgumentException why) {
        return new Problem(
                ProblemCode.ALTERED,
                Where.file(ArchiveFolder.BATCHES + "/" + batch + "/" + table.name()),
                "a row" + (serial.isEmpty() ? "" : " of " + serial) + " is left out: " + why.getMessage(),
                "",
                "copy the batch again from where it is whole");
    }
}
