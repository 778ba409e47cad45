package org.tautlog.cli.logs;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.ReadSummary;
import org.tautlog.problem.Problem;
import org.tautlog.review.ImportRecord;

/** Tells what was rejected and what was taken for granted while logs were read; silent where there is nothing to tell. */
public final class ReadingAccount {
    private static final int MOST_SENTENCES = 20;
    private static final int WIDTH = 100;

    private ReadingAccount() {}

    /**
     * Prints the account.
     *
     * @param summary what was read and rejected
     * @param err the error output
     */
    public static void print(ReadSummary summary, PrintWriter err) {
        long rejected = summary.traces().rejected() + summary.files().rejected();
        if (rejected > 0 || !summary.problems().isEmpty()) {
            err.println(
                    rejected == 0 && summary.lines().rejected() == 0
                            ? "nothing rejected; noted while reading:"
                            : "rejected: " + Counted.of(summary.files().rejected(), "file") + ", "
                                    + Counted.of(summary.traces().rejected(), "trace") + ", "
                                    + Counted.of(summary.lines().rejected(), "line"));
            sentences(summary.problems(), summary.problemsMet(), err);
        }
        if (!summary.assumptions().isEmpty()) {
            err.println("taken for granted; where it is wrong, say so in a layout.toml beside the logs:");
            byFile(summary.assumptions()).forEach((file, what) -> {
                err.println("  " + Terminal.harmless(file) + ':');
                wrapped(what).forEach(line -> err.println("    " + Terminal.harmless(line)));
            });
        }
        err.flush();
    }

    /**
     * The same account for a report.
     *
     * @param summary what was read and rejected
     * @return the account
     */
    public static ImportRecord imported(ReadSummary summary) {
        return new ImportRecord(
                (int) summary.files().kept(),
                (int) summary.files().ignored(),
                summary.traces().kept(),
                summary.traces().rejected() + summary.files().rejected(),
                summary.problems(),
                summary.assumptions());
    }

    private static Map<String, List<String>> byFile(List<Problem> assumptions) {
        return assumptions.stream()
                .collect(Collectors.groupingBy(
                        assumption -> assumption.where().file(),
                        LinkedHashMap::new,
                        Collectors.mapping(Problem::what, Collectors.toList())));
    }

    /** In lines that a terminal holds, broken between words. */
    private static List<String> wrapped(List<String> what) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (var word : String.join("; ", what).split(" ", -1)) {
            if (!line.isEmpty() && line.length() + word.length() >= WIDTH) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static void sentences(List<Problem> problems, long met, PrintWriter err) {
        problems.stream()
                .limit(MOST_SENTENCES)
                .forEach(problem -> err.println("  " + Terminal.harmless(problem.sentence())));
        if (met > MOST_SENTENCES) {
            err.println("  and " + (met - MOST_SENTENCES) + " more");
        }
    }
}
