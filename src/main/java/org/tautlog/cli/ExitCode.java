package org.tautlog.cli;

/** What the program's exit code says; scripts rely on the numbers. */
enum ExitCode {
    ALL_CONFORMING(0, "everything asked for was done, and all that was judged conforms"),
    NOT_ALL_CONFORMING(1, "something that was judged does not conform, needs a person or could not be judged"),
    WRONG_USE(2, "the command line or the joint specification cannot be used"),
    NOTHING_READ(3, "nothing could be read"),
    FAILED(4, "the program itself failed");

    private final int number;
    private final String meaning;

    ExitCode(int number, String meaning) {
        this.number = number;
        this.meaning = meaning;
    }

    int number() {
        return number;
    }

    String meaning() {
        return meaning;
    }
}
