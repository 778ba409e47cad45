package org.tautlog.archive;

import java.util.List;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;

/**
 * What a check of the whole archive found.
 *
 * @param entries how many entries the chain has
 * @param head hash at its end, in lower-case hex; write it down elsewhere, or seal it
 * @param batches how many batches count
 * @param files how many of their files were hashed
 * @param rows how many rows were held against their hashes
 * @param problems everything altered, missing or added, each with its file, and what dead writers left
 * @param seals every seal, in the archive and given
 * @param provenEntries how many entries a seal kept elsewhere, signed by the key, shows to be all there; 0 without one
 * @param unplacedBatches how many batches, of older programs, do not name the entry that they follow
 */
public record Verification(
        int entries,
        String head,
        int batches,
        int files,
        long rows,
        List<Problem> problems,
        List<SealCheck> seals,
        int provenEntries,
        int unplacedBatches) {
    public Verification {
        problems = List.copyOf(problems);
        seals = List.copyOf(seals);
    }

    /** {@return whether all that was ever kept is there, unaltered; what dead writers left does not count against it} */
    public boolean isWhole() {
        return problems.stream().allMatch(problem -> problem.code() == ProblemCode.LEFTOVER);
    }
}
