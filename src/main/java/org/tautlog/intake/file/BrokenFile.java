package org.tautlog.intake.file;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.zip.ZipException;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** What an {@link IOException} means to the one who gave the file. */
public final class BrokenFile {
    private BrokenFile() {}

    /** A packed file that unpacks to more than the bounds allow. */
    public static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;

        /**
         * Says which bound was met.
         *
         * @param message what is too large, and the bound
         */
        public TooLarge(String message) {
            super(message);
        }
    }

    /**
     * The problem that a failure is.
     *
     * @param where the place
     * @param cause the failure
     * @return what is wrong and what to do
     */
    public static Problem problem(Where where, IOException cause) {
        if (cause instanceof TooLarge) {
            return new Problem(
                    ProblemCode.TOO_LARGE,
                    where,
                    String.valueOf(cause.getMessage()),
                    "",
                    "raise the bound where that is right");
        }
        if (cause instanceof EOFException) {
            return new Problem(
                    ProblemCode.TRUNCATED, where, "the packed file ends in the middle", "", "copy or export it again");
        }
        if (cause instanceof ZipException) {
            return new Problem(
                    ProblemCode.BAD_ARCHIVE,
                    where,
                    "the packed file is damaged: " + cause.getMessage(),
                    "",
                    "copy or export it again");
        }
        var reason = cause instanceof NoSuchFileException
                ? "it is not there"
                : cause instanceof AccessDeniedException
                        ? "the right to read it is missing"
                        : cause.getClass().getSimpleName();
        return new Problem(
                ProblemCode.NOT_READABLE,
                where,
                "the file cannot be read: " + reason,
                "",
                "check its name and the rights on it");
    }
}
