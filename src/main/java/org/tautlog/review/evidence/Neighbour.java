package org.tautlog.review.evidence;

import java.util.List;
import java.util.stream.Stream;
import org.tautlog.archive.table.BriefRow;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.review.shape.Landmarks;
import org.tautlog.review.stream.Levels;
import org.tautlog.trace.TraceIdentity;

/**
 * A tightening from around an engine, as far as its dossier looks at it: a few columns of some thousand rows.
 *
 * @param judgement the judgement that stands
 * @param levels what is charted of it
 * @param landmarks what its curve is laid over others by
 */
record Neighbour(BriefJudgement judgement, Levels levels, Landmarks landmarks) {
    /** The columns that it is made of, beside those of a judgement in brief. */
    static List<String> columns() {
        return Stream.concat(Levels.columns().stream(), Landmarks.columns().stream())
                .distinct()
                .toList();
    }

    static Neighbour of(BriefRow row) {
        return new Neighbour(row.judgement(), Levels.of(row.judgement(), row::number), Landmarks.of(row::number));
    }

    TraceIdentity identity() {
        return judgement.identity();
    }
}
