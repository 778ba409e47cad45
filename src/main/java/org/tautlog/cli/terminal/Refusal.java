package org.tautlog.cli.terminal;

import java.util.stream.Collectors;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;

/** A command that cannot go on, with the sentence its user reads and the exit code; nothing broke. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final ExitCode exitCode;

    private Refusal(ExitCode exitCode, String sentence) {
        super(sentence);
        this.exitCode = exitCode;
    }

    /**
     * The words of the command line cannot be used.
     *
     * @param sentence what is wrong and what to do
     * @return the refusal, to be thrown
     */
    public static Refusal wrongUse(String sentence) {
        return new Refusal(ExitCode.WRONG_USE, sentence);
    }

    /**
     * Nothing could be read or computed.
     *
     * @param sentence what is wrong and what to do
     * @return the refusal, to be thrown
     */
    public static Refusal nothingRead(String sentence) {
        return new Refusal(ExitCode.NOTHING_READ, sentence);
    }

    /**
     * The value read, or a refusal that says everything that is wrong with its file.
     *
     * @param outcome what came of reading
     * @param <T> what was read
     * @return the value
     */
    public static <T> T orRefuse(Outcome<T> outcome) {
        return outcome.value()
                .orElseThrow(() -> wrongUse(outcome.problems().stream()
                        .map(Problem::sentence)
                        .map(Terminal::harmless)
                        .collect(Collectors.joining(System.lineSeparator() + "  "))));
    }

    /**
     * What the process returns.
     *
     * @return the code
     */
    public ExitCode exitCode() {
        return exitCode;
    }
}
