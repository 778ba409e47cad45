package org.tautlog.cli.logs;

import java.util.concurrent.Callable;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Help;
import org.tautlog.report.judged.JoiningResultJson;
import org.tautlog.report.judged.JudgementJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Judges every trace of some logs. */
@Command(
        name = "judge",
        description = {
            "Judges every trace: conforming, review, nonconforming, or unjudged where the data is too poor.",
            "",
            "Shows the tightenings that need a person, worst first, each with its findings in words."
                    + " What was rejected or taken for granted while reading goes to the error output.",
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog judge logs/",
            "  tautlog judge S40-early.csv --spec joint.toml --all",
            "  tautlog judge logs/ --json | jq 'select(.verdict != \"conforming\") | .serial'",
        },
        mixinStandardHelpOptions = true)
final class JudgeCommand implements Callable<Integer>, Help.Judging {
    @Mixin
    private LogInputs inputs = new LogInputs();

    @Option(names = "--json", description = "One JSON object a line for every trace, in reading order.")
    private boolean json;

    @Option(
            names = "--joining-result",
            description =
                    "One JSON object a line as results of OPC 40450-1, field names from memory; with no table, and without"
                            + " the samples of any trace.")
    private boolean joiningResult;

    @Option(names = "--all", description = "Show every tightening, the conforming ones too.")
    private boolean all;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        var request = inputs.request();
        var line = spec.commandLine();
        var out = line.getOut();
        var table = new JudgementTable(all, line.getColorScheme().ansi());
        var summary = Judging.run(request, line.getErr(), (judgement, curve) -> {
            table.count(judgement);
            if (json) {
                out.println(JudgementJson.line(judgement));
            } else if (joiningResult) {
                out.println(JoiningResultJson.line(judgement));
            } else {
                table.keep(judgement);
            }
        });
        if (!json && !joiningResult) {
            out.print(table.text(request));
        }
        return ExitCode.of(table.counts(), summary).number();
    }
}
