package org.tautlog.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One run of the program as its user sees it. */
record CommandLineRun(int exitCode, String out, String err) {
    static CommandLineRun of(String... words) {
        var out = new StringWriter();
        var err = new StringWriter();
        int exitCode = Main.run(new PrintWriter(out), new PrintWriter(err), words);
        return new CommandLineRun(exitCode, out.toString(), err.toString());
    }
}
