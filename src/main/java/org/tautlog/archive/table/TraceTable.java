package org.tautlog.archive.table;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Trace;

/**
 * Traces, one a row. Samples are lists of doubles, the very values that were judged: whoever opens the file reads them
 * with no scale and no formula. Scaled whole numbers would pack to 3.5 kB a trace where these take 6.1 kB (1,500 samples,
 * Zstandard), and 4-byte floats cannot hold what an export prints.
 */
public final class TraceTable {
    private static final Table<Trace> TABLE = new Table<>(
            "traces",
            Table.columns(List.of(
                    IdentityColumns.of(Trace::identity, Trace::source),
                    List.of(
                            Column.whole("samples", trace -> trace.curve().size()),
                            new Column<>(
                                    "angle_deg",
                                    ColumnType.SAMPLES,
                                    trace -> trace.curve().anglesDeg()),
                            new Column<>(
                                    "torque_nm",
                                    ColumnType.SAMPLES,
                                    trace -> trace.curve().torquesNm()),
                            new Column<>("time_s", ColumnType.SAMPLES, trace -> timesS(trace.curve())),
                            new Column<>("stage", ColumnType.STAGES, trace -> stages(trace.curve()))))),
            TraceTable::read);

    private TraceTable() {}

    /** {@return the table} */
    public static Table<Trace> table() {
        return TABLE;
    }

    private static Trace read(Row row) {
        var angles = row.samples("angle_deg");
        var torques = row.samples("torque_nm");
        if (angles == null || torques == null) {
            throw new IllegalArgumentException("angle_deg and torque_nm must both hold samples");
        }
        var curve = Curve.of(angles, torques);
        var times = row.samples("time_s");
        curve = times == null ? curve : curve.withTimeS(times);
        var stages = row.stages("stage");
        curve = stages == null ? curve : curve.withStages(stages);
        return new Trace(IdentityColumns.identity(row), IdentityColumns.source(row), curve);
    }

    private static double @Nullable [] timesS(Curve curve) {
        if (!curve.hasTime()) {
            return null;
        }
        var times = new double[curve.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = curve.timeS(i);
        }
        return times;
    }

    private static int @Nullable [] stages(Curve curve) {
        if (!curve.hasStages()) {
            return null;
        }
        var stages = new int[curve.size()];
        for (int i = 0; i < stages.length; i++) {
            stages[i] = curve.stage(i);
        }
        return stages;
    }
}
