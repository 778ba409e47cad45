package org.tautlog.cli.evidence;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Help;
import org.tautlog.cli.terminal.ReportOptions;
import org.tautlog.report.evidence.ContainmentJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the engines that a cause may have touched. */
@Command(
        name = "contain",
        description = {
            "Lists the engines that a cause may have touched, each with why: from last known good to first known good on"
                    + " the same spindle, or all of a lot. An engine without a recording is suspect, not good.",
            "",
            "Writes containment.html, the same as .pdf, the whole list as .csv, and as .json the first 500 of each place with all that was measured. Exit code 1 where an engine is to be held, 3 where the archive shows no such suspect."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog contain --serial FW-000017 --bolt 3 --archive evidence/",
            "  tautlog contain --finding weak-bolt --archive evidence/",
            "  tautlog contain --station S40 --spindle 2 --around 2026-03-17T09:10+01:00 --archive evidence/",
            "  tautlog contain --lot A18 --archive evidence/"
        },
        mixinStandardHelpOptions = true)
final class ContainCommand implements Callable<Integer>, Help.Judging {
    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Mixin
    private Suspicion suspicion = new Suspicion();

    @Mixin
    private ReportOptions reports = new ReportOptions();

    @Option(names = "--json", description = "One JSON object to the standard output, and no files.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        var found = ContainRun.of(archive.open(), suspicion, line.getErr());
        var provenance = archive.provenance();
        if (json) {
            line.getOut().println(ContainmentJson.of(found.hold(), found.shown(), provenance));
        } else {
            ContainRun.print(found.hold(), line.getOut());
            ContainmentReports.write(found, provenance, reports).print(line.getOut());
        }
        return ExitCode.NOT_ALL_CONFORMING.number();
    }
}
