package org.tautlog.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;

/** One run of the program as its user sees it. */
public record CommandLineRun(int exitCode, String out, String err) {
    public static CommandLineRun of(String... words) {
        var out = new StringWriter();
        var err = new StringWriter();
        int exitCode = Main.run(new PrintWriter(out), new PrintWriter(err), words);
        return new CommandLineRun(exitCode, out.toString(), err.toString());
    }

    /** What the program says with {@code --json}. */
    public static JsonNode json(String... words) throws JsonProcessingException {
        var all = Arrays.copyOf(words, words.length + 1);
        all[words.length] = "--json";
        var run = of(all);
        if (!run.out.startsWith("{")) throw new AssertionError(run.out + run.err);
        return new ObjectMapper().readTree(run.out);
    }
}
