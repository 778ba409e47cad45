package org.tautlog.cli.terminal;

import org.tautlog.intake.ReadSummary;
import org.tautlog.review.VerdictCounts;

/** What the program's exit code says; scripts rely on the numbers. */
public enum ExitCode {
    /** Done, and all that was judged conforms. */
    ALL_CONFORMING(0, "everything asked for was done, and all that was judged conforms"),
    /** Something asks for a person. */
    NOT_ALL_CONFORMING(1, "something does not conform, needs a person, could not be judged or was rejected"),
    /** The words of the command line, the joint specification, or a file or folder cannot be used. */
    WRONG_USE(2, "the command line, the joint specification, or a file or folder cannot be used"),
    /** Nothing could be read. */
    NOTHING_READ(3, "nothing could be read"),
    /** The program failed. */
    FAILED(4, "the program itself failed");

    private final int number;
    private final String meaning;

    ExitCode(int number, String meaning) {
        this.number = number;
        this.meaning = meaning;
    }

    /**
     * Of a run that judges. A trace or file that was rejected is a tightening that nobody judged: that is not all conforming.
     *
     * @param counts the verdicts
     * @param summary what was read and rejected
     * @return the code
     */
    public static ExitCode of(VerdictCounts counts, ReadSummary summary) {
        if (summary.traces().kept() == 0) {
            return NOTHING_READ;
        }
        boolean rejected = summary.traces().rejected() > 0 || summary.files().rejected() > 0;
        return counts.needingAPerson() > 0 || rejected ? NOT_ALL_CONFORMING : ALL_CONFORMING;
    }

    /**
     * Of a run that keeps what it reads, whatever the verdicts.
     *
     * @param summary what was read and rejected
     * @return the code
     */
    public static ExitCode ofReading(ReadSummary summary) {
        boolean rejected = summary.traces().rejected() > 0 || summary.files().rejected() > 0;
        return rejected ? NOT_ALL_CONFORMING : ALL_CONFORMING;
    }

    /**
     * What the process returns.
     *
     * @return 0 to 4
     */
    public int number() {
        return number;
    }

    String meaning() {
        return meaning;
    }
}
