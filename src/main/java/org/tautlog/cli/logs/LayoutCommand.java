package org.tautlog.cli.logs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.LayoutProposal;
import org.tautlog.report.chart.RecordedTraces;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks at an export that nobody described yet. */
@Command(
        name = "layout",
        description = {
            "Looks at an unknown export, proposes its layout file with the reason of each line, and draws the first"
                    + " traces as the proposal reads them.",
            "",
            "Where the names of the columns say nothing, the numbers are looked at; such lines are marked CHECK THIS, units"
                    + " that the file does not state NO UNIT, and times that may be another day AMBIGUOUS. A line with a unit that is"
                    + " not known is a comment until somebody says which it is. Where there is such a line the exit code is 1.",
            "",
            "Of JSON each thing gets its JSON Pointer, in which * is every element of an array. A stage may be a field of"
                    + " each object in a list of stages, or \"/steps/*\" for its place in the list. What a header names must"
                    + " stand before the traces. Lists of traces within lists are not read."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog layout strange.txt",
            "  tautlog layout export.json",
            "  tautlog layout strange.txt --write logs/layout.toml --out traces.svg"
        },
        mixinStandardHelpOptions = true)
final class LayoutCommand implements Callable<Integer> {
    private static final int MOST_DRAWN = 3;

    @Parameters(paramLabel = "FILE", description = "The export, plain or packed.")
    private Path file = Path.of("");

    @Option(names = "--write", paramLabel = "FILE", description = "Write the layout to a file; never over another.")
    private @Nullable Path write;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Draw the first traces into this SVG file, not on the terminal.")
    private @Nullable Path drawing;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (!Files.isRegularFile(file)) {
            throw Refusal.nothingRead("there is no file " + file + "; name one exported log");
        }
        if (write != null && Files.exists(write)) {
            throw Refusal.wrongUse(write + " is there already; name a new file with --write");
        }
        var proposal = LayoutProposal.of(file, MOST_DRAWN);
        if (proposal.value().isEmpty()) {
            throw Refusal.nothingRead(LayoutFindings.whyNot(proposal.problems()));
        }
        var found = proposal.value().get();
        var out = spec.commandLine().getOut();
        if (write == null) {
            out.print(found.text());
        } else {
            Files.writeString(write, found.text());
            out.println("written to " + write);
            LayoutFindings.toCheck(found).forEach(out::println);
        }
        if (drawing != null && !found.traces().isEmpty()) {
            Files.writeString(drawing, RecordedTraces.svg(found.traces()));
            out.println("drawn in " + drawing);
        }
        LayoutFindings.lines(found, drawing == null).forEach(out::println);
        return LayoutFindings.toCheck(found).isEmpty()
                ? ExitCode.ofReading(found.summary()).number()
                : ExitCode.NOT_ALL_CONFORMING.number();
    }
}
