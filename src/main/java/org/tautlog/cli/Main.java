package org.tautlog.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** The one entry point of the program. */
public final class Main {
    private Main() {}

    /**
     * Runs the program and ends the process with its exit code.
     *
     * @param args the words of the command line
     */
    public static void main(String[] args) {
        // A library logs; where nobody configured logging it would say so on the error output of every run.
        System.setProperty("slf4j.internal.verbosity", "ERROR");
        var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        var err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        var root = new RootCommand();
        var line = new CommandLine(root)
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(Trouble::wrongWords)
                .setExecutionExceptionHandler(
                        (failure, command, words) -> Trouble.report(failure, command, root.debug()));
        Help.complete(line);
        int exitCode = line.execute(args);
        out.flush();
        err.flush();
        return exitCode;
    }
}
