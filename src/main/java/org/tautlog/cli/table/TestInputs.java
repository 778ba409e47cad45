package org.tautlog.cli.table;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.spc.study.TestOptions;
import picocli.CommandLine.Option;

/** What the commands that test tables have in common beside their table. */
final class TestInputs {
    @Option(
            names = "--level",
            paramLabel = "P",
            description = "Chance of a positive result by chance alone, for each test; changes: for all tests together"
                    + " (default: 0.01).")
    private @Nullable Double level;

    @Option(names = "--json", description = "One JSON object in place of the text.")
    private boolean json;

    TestOptions options(@Nullable Integer most, @Nullable Integer halfWindow) {
        var usual = TestOptions.withDefaults();
        try {
            return new TestOptions(
                    level == null ? usual.level() : level,
                    most == null ? usual.mostStrays() : most,
                    halfWindow == null ? usual.halfWindow() : halfWindow);
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(String.valueOf(e.getMessage()));
        }
    }

    int print(TestStudying studying, PrintWriter out) {
        if (json) {
            out.println(studying.json());
        } else {
            studying.lines().forEach(text -> out.println(Terminal.harmless(text)));
        }
        return studying.exitCode();
    }
}
