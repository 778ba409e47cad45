package org.tautlog.archive.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/**
 * A judgement as a few of its columns tell it.
 *
 * @param judgement the judgement in brief
 * @param specificationSha256 hash of the specification that judged
 * @param batch the batch that brought it in
 * @param row the columns that were asked for
 */
public record BriefRow(BriefJudgement judgement, String specificationSha256, String batch, Row row) {
    /** The columns that a brief judgement is made of. */
    public static final List<String> COLUMNS = List.of(
            "serial",
            "station",
            "spindle",
            "bolt",
            "attempt",
            "recorded_time",
            "bolt_lot",
            "source_file",
            "source_line",
            "source_sha256",
            "specification_sha256",
            "verdict",
            "finding_code",
            "finding_severity",
            "batch");

    /**
     * A number of the row.
     *
     * @param column its column, among those asked for
     * @return the number; NaN where the column holds nothing
     */
    public double number(String column) {
        return row.cell(column) instanceof Double number ? number : Double.NaN;
    }

    /** Makes rows brief; what many rows say alike is held once. */
    public static final class Reader {
        private static final String NOTE = Consequence.NOTE.word();

        private final Map<Object, Object> held = new HashMap<>();

        /** A reader that holds nothing yet. */
        public Reader() {}

        /**
         * A row in brief.
         *
         * @param row a row of {@link JudgementTable} with at least {@link BriefRow#COLUMNS}
         * @return the same in brief
         */
        public BriefRow read(Row row) {
            var identity = IdentityColumns.identity(row);
            var source = IdentityColumns.source(row);
            var judgement = new BriefJudgement(
                    new TraceIdentity(
                            once(identity.serial()),
                            once(identity.station()),
                            once(identity.spindle()),
                            once(identity.bolt()),
                            identity.attempt(),
                            identity.time(),
                            once(identity.boltLot())),
                    new Source(once(source.file()), source.line(), once(source.sha256())),
                    Words.VERDICT.read(row.text("verdict")),
                    once(findings(row, false)),
                    once(findings(row, true)));
            return new BriefRow(judgement, once(row.text("specification_sha256")), once(row.text("batch")), row);
        }

        private static List<FindingCode> findings(Row row, boolean withoutNotes) {
            var words = row.list("finding_code");
            var severities = row.list("finding_severity");
            var codes = new ArrayList<FindingCode>(words.size());
            for (int i = 0; i < words.size(); i++) {
                if (!withoutNotes || !NOTE.equals(severities.get(i))) {
                    codes.add(Words.FINDING.read(words.get(i)));
                }
            }
            return List.copyOf(codes);
        }

        @SuppressWarnings("unchecked") // the value held is the one that equals it, of the same type
        private <T> T once(T value) {
            var known = held.putIfAbsent(value, value);
            return known == null ? value : (T) known;
        }
    }
}
