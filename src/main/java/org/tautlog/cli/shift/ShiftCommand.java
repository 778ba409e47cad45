package org.tautlog.cli.shift;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.logs.LogInputs;
import org.tautlog.cli.terminal.Help;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.ReportOptions;
import org.tautlog.review.ShiftReviewer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reviews a shift and writes its report. */
@Command(
        name = "shift",
        description = {
            "Reviews a shift: what does not conform and why, what changed where and since when, what to do first.",
            "",
            "Writes shift.html, one page that needs nothing beside it, shift.pdf with the same for paper,"
                    + " verdicts.csv with every tightening, and shift.json"
                    + " with the page's figures."
                    + " Files of an earlier run in the same folder are replaced."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog shift logs/",
            "  tautlog shift tuesday/ --previous monday/verdicts.csv",
            "  tautlog shift S40-early.csv S50-early.csv --spec joint.toml --out monday/",
            "  tautlog shift --archive evidence/ --from 2026-03-17T06:00+01:00 --to 2026-03-17T14:00+01:00",
            "  tautlog shift --archive evidence/ --calendar shifts.toml --shift \"early 2026-03-17\""
        },
        mixinStandardHelpOptions = true)
final class ShiftCommand implements Callable<Integer>, Help.Judging {
    @Mixin
    private LogInputs inputs = new LogInputs();

    @Mixin
    private ArchivedShiftInputs archived = new ArchivedShiftInputs();

    @Mixin
    private ReportOptions reports = new ReportOptions();

    @Option(
            names = "--list",
            paramLabel = "N",
            defaultValue = "" + ShiftReviewer.USUALLY_LISTED,
            description = "How many tightenings to show with their traces, worst first (default: ${DEFAULT-VALUE}).")
    private int listed;

    @Option(
            names = "--previous",
            paramLabel = "LOGS",
            description = "An earlier shift to compare with: its logs, or the verdicts.csv of its report.")
    private @Nullable Path previous;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (listed < 1) {
            throw Refusal.wrongUse("--list is " + listed + "; at least 1 tightening must be shown");
        }
        var line = spec.commandLine();
        var result = archived.given(inputs)
                ? ShiftRun.run(archived, listed, previous, reports, line.getErr())
                : ShiftRun.run(inputs.request(), listed, previous, reports, line.getErr());
        ShiftSummary.print(result, line.getOut());
        return result.exitCode().number();
    }
}
