package org.tautlog.cli.evidence;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Help;
import org.tautlog.cli.terminal.ReportOptions;
import org.tautlog.report.evidence.DossierJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells everything an archive knows of one engine. */
@Command(
        name = "engine",
        description = {
            "Tells everything that an archive knows of one engine: is it sound, what is not known, who else.",
            "",
            "Writes engine-SERIAL.html, one page that needs nothing beside it, the same as .pdf, every recording as .csv,"
                    + " and all of it as .json. Exit code 0 where every bolt position"
                    + " conforms or is covered by a recorded decision, 1 where not or where the archive is not as it was"
                    + " kept, 3 where the archive has no such engine."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog engine FW-000017 --archive evidence/",
            "  tautlog engine FW-000017 --archive evidence/ --json | jq .soundness"
        },
        mixinStandardHelpOptions = true)
final class EngineCommand implements Callable<Integer>, Help.Judging {
    @Parameters(paramLabel = "SERIAL", description = "The engine.")
    private String serial = "";

    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Mixin
    private ReportOptions reports = new ReportOptions();

    @Option(names = "--json", description = "One JSON object to the standard output, and no files.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        var dossier = DossierRun.of(archive.open(), serial);
        var provenance = archive.provenance();
        if (json) {
            line.getOut().println(DossierJson.of(dossier, provenance));
        } else {
            DossierRun.print(dossier, line.getOut());
            DossierReports.write(dossier, provenance, reports).print(line.getOut());
        }
        return (dossier.soundness().isSound() ? ExitCode.ALL_CONFORMING : ExitCode.NOT_ALL_CONFORMING).number();
    }
}
