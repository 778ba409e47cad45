package org.tautlog.judge;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/**
 * A judgement without numbers and sentences: what a search among very many needs.
 *
 * @param identity what was judged
 * @param source where it was read
 * @param verdict the word
 * @param findings what was found, gravest first
 * @param causes those of the findings that are more than a note
 */
public record BriefJudgement(
        TraceIdentity identity, Source source, Verdict verdict, List<FindingCode> findings, List<FindingCode> causes) {
    public BriefJudgement {
        Objects.requireNonNull(identity, "identity");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(verdict, "verdict");
        findings = List.copyOf(findings);
        causes = List.copyOf(causes);
    }

    /**
     * A judgement in brief.
     *
     * @param judgement all of it
     * @return what a search needs of it
     */
    public static BriefJudgement of(Judgement judgement) {
        return new BriefJudgement(
                judgement.identity(),
                judgement.source(),
                judgement.verdict(),
                judgement.findings().stream().map(Finding::code).toList(),
                judgement.findings().stream()
                        .filter(finding -> finding.severity() != Consequence.NOTE)
                        .map(Finding::code)
                        .toList());
    }

    /**
     * Whether a tightening shows a cause.
     *
     * @param code the finding; null where whatever does not conform counts
     * @return whether it has the finding as more than a note, or does not conform
     */
    public boolean shows(@Nullable FindingCode code) {
        return code == null ? verdict != Verdict.CONFORMING : causes.contains(code);
    }
}
