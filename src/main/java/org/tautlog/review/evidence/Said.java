package org.tautlog.review.evidence;

import java.util.Objects;
import org.tautlog.judge.Verdict;

/**
 * What one version of a specification, and one program, said of a recording.
 *
 * @param specification name of the specification
 * @param version its version
 * @param specificationSha256 hash of its file; empty where it was not a file
 * @param program version of the program that judged
 * @param verdict the verdict
 * @param rowSha256 hash of the judgement's row in the archive
 */
public record Said(
        String specification,
        String version,
        String specificationSha256,
        String program,
        Verdict verdict,
        String rowSha256) {
    public Said {
        Objects.requireNonNull(specification, "specification");
        Objects.requireNonNull(version, "version");
        Objects.requireNonNull(specificationSha256, "specificationSha256");
        Objects.requireNonNull(program, "program");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(rowSha256, "rowSha256");
    }
}
