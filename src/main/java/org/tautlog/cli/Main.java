package org.tautlog.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The one entry point of the program. */
@Command(name = "tautlog", mixinStandardHelpOptions = true)
public final class Main {
    private Main() {}

    /**
     * Runs the program and ends the process with its exit code.
     *
     * @param args the words of the command line
     */
    public static void main(String[] args) {
        var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        var err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(new Main()).setOut(out).setErr(err).execute(args);
    }
}
