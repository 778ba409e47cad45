package org.tautlog.intake;

import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Says that the program itself failed on something. */
final class ReadingFailed {
    private ReadingFailed() {}

    static Problem problem(Where where, String what, RuntimeException failure) {
        var at = failure.getStackTrace();
        return new Problem(
                ProblemCode.READING_FAILED,
                where,
                "the program failed on this " + what + ": " + failure
                        + (at.length == 0 ? "" : " at " + at[0].getFileName() + ":" + at[0].getLineNumber()),
                "",
                "the others are read; report it with the file");
    }
}
