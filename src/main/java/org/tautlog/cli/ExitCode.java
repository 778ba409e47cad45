package org.tautlog.cli;

import org.tautlog.intake.ReadSummary;
import org.tautlog.review.VerdictCounts;

/** What the program's exit code says; scripts rely on the numbers. */
enum ExitCode {
    ALL_CONFORMING(0, "everything asked for was done, and all that was judged conforms"),
    NOT_ALL_CONFORMING(1, "something does not conform, needs a person, could not be judged or was rejected"),
    WRONG_USE(2, "the command line or the joint specification cannot be used"),
    NOTHING_READ(3, "nothing could be read"),
    FAILED(4, "the program itself failed");

    private final int number;
    private final String meaning;

    ExitCode(int number, String meaning) {
        this.number = number;
        this.meaning = meaning;
    }

    /** A trace or file that was rejected is a tightening that nobody judged: that is not all conforming. */
    static ExitCode of(VerdictCounts counts, ReadSummary summary) {
        if (summary.traces().kept() == 0) {
            return NOTHING_READ;
        }
        boolean rejected = summary.traces().rejected() > 0 || summary.files().rejected() > 0;
        return counts.needingAPerson() > 0 || rejected ? NOT_ALL_CONFORMING : ALL_CONFORMING;
    }

    /** Of a run that keeps what it reads, whatever the verdicts. */
    static ExitCode ofReading(ReadSummary summary) {
        boolean rejected = summary.traces().rejected() > 0 || summary.files().rejected() > 0;
        return rejected ? NOT_ALL_CONFORMING : ALL_CONFORMING;
    }

    int number() {
        return number;
    }

    String meaning() {
        return meaning;
    }
}
