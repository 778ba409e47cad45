package org.tautlog.cli.evidence;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Help;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.report.evidence.ComparisonCsv;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What another specification would change. */
@Command(
        name = "compare",
        description = {
            "Judges the same traces by two joint specifications and lists every verdict that changes: what would another"
                    + " window have done, before it is released. Nothing in the archive is changed.",
            "",
            "Writes comparison.csv. Exit code 0 where no verdict changes, 1 where one does or a trace could not be read."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog compare joint-3.toml joint-4.toml --archive evidence/",
            "  tautlog compare joint-3.toml joint-4.toml logs/"
        },
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer>, Help.Judging {
    @Parameters(index = "0", paramLabel = "SPEC_A", description = "The joint specification that stands.")
    private Path first = Path.of("");

    @Parameters(index = "1", paramLabel = "SPEC_B", description = "The one that might.")
    private Path second = Path.of("");

    @Parameters(index = "2..*", arity = "0..*", paramLabel = "LOGS", description = "Log files or folders.")
    private List<Path> logs = List.of();

    @Option(names = "--archive", paramLabel = "DIR", description = "Judge what an archive kept instead of LOGS.")
    private @Nullable Path archive;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "reports", description = ReportFile.FOLDER)
    private Path out = Path.of("");

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        var run = new ComparisonRun(first, second);
        boolean whole = run.judge(archive, logs, line.getErr());
        run.print(line.getOut());
        var table = ReportFile.write(
                out, "comparison.csv", file -> ComparisonCsv.write(run.comparison(), run.problems(), file));
        line.getOut().println("changes: " + table);
        boolean same = whole && run.comparison().changes().isEmpty();
        return (same ? ExitCode.ALL_CONFORMING : ExitCode.NOT_ALL_CONFORMING).number();
    }
}
