package org.tautlog.archive.table;

import static org.tautlog.archive.table.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;

/** Judgements with the signatures they rest on, one a row. Findings lie in lists of equal length, gravest first. */
public final class JudgementTable {
    private static final Table<KeptJudgement> TABLE = new Table<>(
            "judgements",
            Table.columns(List.of(
                    IdentityColumns.of(
                            kept -> kept.judgement().identity(),
                            kept -> kept.judgement().source()),
                    verdict(),
                    SignatureColumns.of(kept -> kept.judgement().signature()),
                    findings())),
            JudgementTable::read);

    private JudgementTable() {}

    /** {@return the table} */
    public static Table<KeptJudgement> table() {
        return TABLE;
    }

    private static List<Column<KeptJudgement>> verdict() {
        return List.of(
                text("specification_name", kept -> kept.judgement().specificationName()),
                text("specification_version", kept -> kept.judgement().specificationVersion()),
                text("specification_sha256", KeptJudgement::specificationSha256),
                text("program", KeptJudgement::program),
                text("verdict", kept -> kept.judgement().verdict().word()));
    }

    private static List<Column<KeptJudgement>> findings() {
        return List.of(
                texts("finding_code", finding -> finding.code().word()),
                texts("finding_severity", finding -> finding.severity().word()),
                new Column<>("finding_measured", ColumnType.NUMBERS, kept -> each(kept, Finding::measured)),
                new Column<>("finding_limit", ColumnType.NUMBERS, kept -> each(kept, Finding::limit)),
                texts("finding_unit", Finding::unit),
                texts("finding_message", Finding::message));
    }

    private static KeptJudgement read(Row row) {
        var judgement = new Judgement(
                IdentityColumns.identity(row),
                IdentityColumns.source(row),
                row.text("specification_name"),
                row.text("specification_version"),
                SignatureColumns.signature(row),
                Words.VERDICT.read(row.text("verdict")),
                findings(row));
        return new KeptJudgement(judgement, row.text("program"), row.text("specification_sha256"));
    }

    private static List<Finding> findings(Row row) {
        var codes = row.list("finding_code");
        return IntStream.range(0, codes.size())
                .mapToObj(i -> new Finding(
                        Words.FINDING.read(codes.get(i)),
                        Words.CONSEQUENCE.read(row.list("finding_severity").get(i)),
                        (Double) row.list("finding_measured").get(i),
                        (Double) row.list("finding_limit").get(i),
                        (String) row.list("finding_unit").get(i),
                        (String) row.list("finding_message").get(i)))
                .toList();
    }

    private static Column<KeptJudgement> texts(String name, Function<Finding, @Nullable Object> part) {
        return new Column<>(name, ColumnType.TEXTS, kept -> each(kept, part));
    }

    private static List<@Nullable Object> each(KeptJudgement kept, Function<Finding, @Nullable Object> part) {
        var parts = new ArrayList<@Nullable Object>();
        kept.judgement().findings().forEach(finding -> parts.add(part.apply(finding)));
        return parts;
    }
}
