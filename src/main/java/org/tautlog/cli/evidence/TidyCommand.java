package org.tautlog.cli.evidence;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.tautlog.archive.Tidied;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.evidence.ArchiveJson;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Merges small batches of an archive and clears what dead runs left. */
@Command(
        name = "tidy",
        description = {
            "Merges an archive's small batches, so that it stays quick, and clears what killed runs left behind.",
            "",
            "No answer changes and no proof is lost. Others may read and write meanwhile."
        },
        mixinStandardHelpOptions = true)
final class TidyCommand implements Callable<Integer> {
    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Option(names = "--json", description = "One JSON object to the standard output, and nothing else.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var tidied = archive.open().tidy(ArchiveOption.stamp());
        if (json) {
            spec.commandLine().getOut().println(ArchiveJson.of(tidied));
        } else {
            print(tidied, spec.commandLine());
        }
        return (tidied.problems().isEmpty() ? ExitCode.ALL_CONFORMING : ExitCode.NOT_ALL_CONFORMING).number();
    }

    private static void print(Tidied tidied, CommandLine line) {
        tidied.problems().forEach(problem -> line.getErr().println(Terminal.harmless(problem.sentence())));
        tidied.cleared().forEach(name -> line.getOut().println("cleared " + name));
        if (tidied.entered() > 0) {
            line.getOut()
                    .println("entered into the ledger: " + Counted.of(tidied.entered(), "batch")
                            + " whose run was killed");
        }
        line.getOut().println("merged " + Counted.of(tidied.merged(), "batch") + " into " + tidied.into());
    }
}
