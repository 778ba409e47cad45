package org.tautlog.cli;

/** A command that cannot go on, with the sentence its user reads and the exit code; nothing broke. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final ExitCode exitCode;

    private Refusal(ExitCode exitCode, String sentence) {
        super(sentence);
        this.exitCode = exitCode;
    }

    static Refusal wrongUse(String sentence) {
        return new Refusal(ExitCode.WRONG_USE, sentence);
    }

    static Refusal nothingRead(String sentence) {
        return new Refusal(ExitCode.NOTHING_READ, sentence);
    }

    ExitCode exitCode() {
        return exitCode;
    }
}
