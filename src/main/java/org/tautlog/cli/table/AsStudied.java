package org.tautlog.cli.table;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Function;
import org.tautlog.intake.table.CsvRow;
import org.tautlog.spc.study.StudyRow;

/** Rows of a table as a study takes them, each made when it is asked for, so that a long table is held once. */
final class AsStudied extends AbstractList<StudyRow> implements RandomAccess {
    private final List<CsvRow> rows;
    private final Function<CsvRow, StudyRow> made;

    AsStudied(List<CsvRow> rows, Function<CsvRow, StudyRow> made) {
        this.rows = rows;
        this.made = made;
    }

    @Override
    public StudyRow get(int row) {
        return made.apply(rows.get(row));
    }

    @Override
    public int size() {
        return rows.size();
    }
}
