package org.tautlog.archive.table;

import java.util.Objects;
import org.tautlog.judge.Judgement;

/**
 * A judgement and what made it.
 *
 * @param judgement the judgement
 * @param program version of the program that judged
 * @param specificationSha256 hash of the specification file's bytes, in lower-case hex; empty where it was not a file
 */
public record KeptJudgement(Judgement judgement, String program, String specificationSha256) {
    public KeptJudgement {
        Objects.requireNonNull(judgement, "judgement");
        Objects.requireNonNull(program, "program");
        Objects.requireNonNull(specificationSha256, "specificationSha256");
    }
}
