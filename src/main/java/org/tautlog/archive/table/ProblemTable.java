package org.tautlog.archive.table;

import static org.tautlog.archive.table.Column.text;
import static org.tautlog.archive.table.Column.whole;

import java.util.List;
import org.tautlog.problem.Problem;
import org.tautlog.problem.Where;

/** What an import met and could not keep as a trace: rejected lines, ignored files, assumptions; one problem a row. */
public final class ProblemTable {
    private static final Table<Problem> TABLE = new Table<>(
            "problems",
            List.of(
                    text("code", problem -> problem.code().word()),
                    text("file", problem -> problem.where().file()),
                    whole("line", problem -> problem.where().line()),
                    whole("column_number", problem -> problem.where().column()),
                    text("key", problem -> problem.where().key()),
                    text("what", Problem::what),
                    text("expected", Problem::expected),
                    text("action", Problem::action)),
            ProblemTable::read);

    private ProblemTable() {}

    /** {@return the table} */
    public static Table<Problem> table() {
        return TABLE;
    }

    private static Problem read(Row row) {
        return new Problem(
                Words.PROBLEM.read(row.text("code")),
                new Where(row.text("file"), row.whole("line"), row.whole("column_number"), row.text("key")),
                row.text("what"),
                row.text("expected"),
                row.text("action"));
    }
}
