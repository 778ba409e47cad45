package org.tautlog.cli.table;

import org.tautlog.cli.terminal.Refusal;
import org.tautlog.report.study.ChartedColumns;
import org.tautlog.spc.study.StudyKind;

/** What a kind of chart needs of its table. */
final class ChartedKind {
    private ChartedKind() {}

    /** Refuses columns that the kind cannot chart, or would drop without a word. */
    static void check(StudyKind kind, ChartedColumns columns) {
        boolean several = columns.values().size() > 1;
        boolean counted = !columns.amount().isEmpty();
        boolean named = !columns.subgroupColumn().isEmpty();
        boolean grouped = named || columns.subgroupSize() > 0;
        if (kind == StudyKind.STREAMS && columns.by().isEmpty()) {
            throw Refusal.wrongUse("streams are told apart by a column; name it with --by COL");
        }
        if (kind.counts() && !counted && kind != StudyKind.FAULTS) {
            throw Refusal.wrongUse("a chart of counts needs the amount behind each; name its column with --amount COL");
        }
        if (!kind.counts() && counted) {
            throw Refusal.wrongUse("--amount belongs to charts of counts; " + kind.word() + " has none");
        }
        if (kind == StudyKind.T_SQUARED && !several) {
            throw Refusal.wrongUse("t2 charts several columns; repeat --value COL");
        }
        if (several && kind != StudyKind.T_SQUARED && !kind.subgroups()) {
            throw Refusal.wrongUse(kind.word() + " charts one column; give --value once");
        }
        if (kind.subgroups() && !several && !grouped) {
            throw Refusal.wrongUse(kind.word() + " needs subgroups; give --subgroup COL or N, or several --value");
        }
        if (kind.subgroups() && several && grouped) {
            throw Refusal.wrongUse("several --value make each row a subgroup already; leave --subgroup out");
        }
        boolean fits = kind.subgroups() || kind == StudyKind.T_SQUARED || (kind == StudyKind.STREAMS && named);
        if (grouped && !fits) {
            throw Refusal.wrongUse("--subgroup does not belong to " + kind.word()
                    + (kind == StudyKind.STREAMS ? " but as the column that names the time" : "")
                    + "; leave it out");
        }
    }
}
