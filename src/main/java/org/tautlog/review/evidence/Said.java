package org.tautlog.review.evidence;

import java.util.Objects;
import java.util.Set;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Verdict;

/**
 * What one version of a specification, and one program, said of a recording.
 *
 * @param specification name of the specification
 * @param version its version
 * @param specificationSha256 hash of its file; empty where it was not a file
 * @param program version of the program that judged
 * @param verdict the verdict
 * @param findings what it found beyond mere notes
 * @param entry number of the ledger's entry of its batch; {@link EngineTightening#NOT_ENTERED} where the ledger has none
 * @param rowSha256 hash of the judgement's row in the archive
 */
public record Said(
        String specification,
        String version,
        String specificationSha256,
        String program,
        Verdict verdict,
        Set<FindingCode> findings,
        int entry,
        String rowSha256) {
    public Said {
        Objects.requireNonNull(specification, "specification");
        Objects.requireNonNull(version, "version");
        Objects.requireNonNull(specificationSha256, "specificationSha256");
        Objects.requireNonNull(program, "program");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(rowSha256, "rowSha256");
        findings = Set.copyOf(findings);
    }

    /**
     * Whether this is graver than an earlier judgement of the same recording.
     *
     * @param earlier the earlier judgement
     * @return whether the verdict is graver or something was found that the earlier one had not found
     */
    public boolean isWorseThan(Said earlier) {
        return verdict.compareTo(earlier.verdict) > 0 || !earlier.findings.containsAll(findings);
    }
}
