package org.tautlog.cli;

import java.util.stream.Collectors;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;

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

    /** The value read, or a refusal that says everything that is wrong with its file. */
    static <T> T orRefuse(Outcome<T> outcome) {
        return outcome.value()
                .orElseThrow(() -> wrongUse(outcome.problems().stream()
                        .map(Problem::sentence)
                        .map(Terminal::harmless)
                        .collect(Collectors.joining(System.lineSeparator() + "  "))));
    }

    ExitCode exitCode() {
        return exitCode;
    }
}
