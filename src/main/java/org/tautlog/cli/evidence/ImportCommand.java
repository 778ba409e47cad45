package org.tautlog.cli.evidence;

import java.io.IOException;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.tautlog.cli.logs.Judging;
import org.tautlog.cli.logs.LogInputs;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Help;
import org.tautlog.report.evidence.ArchiveJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Judges logs and keeps traces and verdicts in an archive. */
@Command(
        name = "import",
        description = {
            "Judges logs and keeps them in an archive: every trace, every verdict, whatever was rejected, and the"
                    + " specification that judged.",
            "",
            "Makes the archive where the folder is new or empty. Logs that are there already, byte by byte, change"
                    + " nothing; a new version of the specification adds its verdicts to the old ones."
        },
        footerHeading = "%nExamples:%n",
        footer = {"  tautlog import logs/ --archive evidence/", "  tautlog verify --archive evidence/"},
        mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer>, Help.Judging {
    @Mixin
    private LogInputs inputs = new LogInputs();

    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Option(names = "--json", description = "One JSON object to the standard output, and nothing else.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        long start = System.nanoTime();
        var result = ImportRun.run(inputs.request(), archive.create(), ArchiveOption.stamp(), line.getErr());
        Judging.orRefuse(result.read());
        line.getOut()
                .println(
                        json
                                ? ArchiveJson.of(
                                        result.imported(), result.read().problems())
                                : sentence(result, Duration.ofNanos(System.nanoTime() - start)));
        return ExitCode.ofReading(result.read()).number();
    }

    private String sentence(ImportRun.Result result, Duration taken) {
        var imported = result.imported();
        double seconds = taken.toMillis() / 1000.0;
        return imported.changedNothing()
                ? "nothing new: all of it is in " + archive.folder() + " already"
                : String.format(
                        Locale.ROOT,
                        "kept in %s as batch %s: %s of %s (%d already there), %s; %s and %s rejected; in %.1f s, %.0f"
                                + " traces a second",
                        archive.folder(),
                        imported.batch(),
                        Counted.of(imported.traces(), "trace"),
                        Counted.of(imported.newSources().size(), "new file"),
                        imported.knownSources().size(),
                        Counted.of(imported.judgements(), "verdict"),
                        Counted.of(result.read().traces().rejected(), "trace"),
                        Counted.of(result.read().files().rejected(), "file"),
                        seconds,
                        imported.traces() / Math.max(seconds, 0.001));
    }
}
