package org.tautlog.cli.evidence;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Help;
import org.tautlog.report.evidence.ArchiveJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges what an archive kept by another specification. */
@Command(
        name = "rejudge",
        description = {
            "Judges every trace of an archive by another version of the joint specification and adds the verdicts.",
            "",
            "Earlier verdicts stay as they are; from then on the new ones stand. 'tautlog compare' says beforehand what"
                    + " would change. A version that judged before with other contents is refused. Exit code 0 where every"
                    + " trace was judged, 1 where one could not be read."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog compare joint-3.toml joint-4.toml --archive evidence/",
            "  tautlog rejudge joint-4.toml --archive evidence/"
        },
        mixinStandardHelpOptions = true)
final class RejudgeCommand implements Callable<Integer>, Help.Judging {
    @Parameters(paramLabel = "SPEC", description = "The joint specification that judges.")
    private Path specification = Path.of("");

    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Option(names = "--json", description = "One JSON object to the standard output, and nothing else.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        var result = RejudgeRun.run(specification, archive.open(), ArchiveOption.stamp(), line.getErr());
        line.getOut()
                .println(
                        json
                                ? ArchiveJson.of(result.imported(), result.problems())
                                : result.sentence(archive.folder()));
        return (result.problems().isEmpty() ? ExitCode.ALL_CONFORMING : ExitCode.NOT_ALL_CONFORMING).number();
    }
}
