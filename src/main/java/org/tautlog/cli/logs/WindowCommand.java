package org.tautlog.cli.logs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Help;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.joint.study.ToleranceStudy;
import org.tautlog.report.window.WindowJson;
import org.tautlog.report.window.WindowText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Studies what the joint's tolerances do, and what window follows. */
@Command(
        name = "window",
        description = {
            "Studies the window of a joint specification: which clamp loads its tolerances let expect, what drives"
                    + " their scatter, which bolts yield when, and which limits follow.",
            "",
            "The specification must state [bolt], [[layer]], [friction], [warm-up] and [tolerance]."
                    + " Writes window.html, one page that needs nothing beside it.",
            "What it proposes is a draft: a person proves it on instrumented bolts and releases it, or does not."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog window joint.toml",
            "  tautlog window joint.toml --from-logs logs/ --out study/",
            "  tautlog window joint.toml --propose joint-draft.toml --coverage 0.999"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:the study was made, whatever it found",
            "2:the command line or the joint specification cannot be used, or states too little",
            "3:nothing could be read from the logs",
            "4:the program itself failed"
        },
        mixinStandardHelpOptions = true)
final class WindowCommand implements Callable<Integer>, Help.Judging {
    @Parameters(paramLabel = "SPEC", description = "Joint specification.")
    private Path specification = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder to write window.html to (default: reports; with --json: no page).")
    private @Nullable Path out;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Whole number that all chance comes from (default: ${DEFAULT-VALUE}).")
    private long seed;

    @Option(
            names = "--draws",
            paramLabel = "N",
            defaultValue = "" + ToleranceStudy.USUAL_DRAWS,
            description = "How many tightenings to draw (default: ${DEFAULT-VALUE}).")
    private int draws;

    @Option(
            names = "--coverage",
            paramLabel = "P",
            defaultValue = "" + ToleranceStudy.USUAL_COVERAGE,
            description = "Share of the drawn tightenings that each pair of limits lets through"
                    + " (default: ${DEFAULT-VALUE}).")
    private double coverage;

    @Option(
            names = "--propose",
            paramLabel = "FILE",
            description = "Write the specification with the proposed limits to a new file.")
    private @Nullable Path proposal;

    @Option(
            names = "--from-logs",
            paramLabel = "LOGS",
            description = "Hold both windows against the tightenings of a log or folder; may be repeated.")
    private List<Path> logs = List.of();

    @Mixin
    private LayoutOption layout = new LayoutOption();

    @Option(names = "--json", description = "One JSON object in place of the text.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        if (layout.given() && logs.isEmpty()) {
            throw Refusal.wrongUse("--layout is of the logs that --from-logs names; none are named");
        }
        var request = new WindowStudying(specification, draws, seed, coverage, logs, layout.readOptions());
        var review = request.run(line.getErr());
        if (json) {
            line.getOut().println(WindowJson.of(review));
        } else {
            WindowText.lines(review).forEach(text -> line.getOut().println(Terminal.harmless(text)));
        }
        var folder = out == null && !json ? Path.of("reports") : out;
        if (folder != null) {
            var page = WindowFiles.page(folder, review, specification);
            if (!json) {
                line.getOut().println("\npage: " + page);
            }
        }
        if (proposal != null) {
            WindowFiles.proposal(proposal, review);
            if (!json) {
                line.getOut().println("proposal: " + proposal);
            }
        }
        return ExitCode.ALL_CONFORMING.number();
    }
}
