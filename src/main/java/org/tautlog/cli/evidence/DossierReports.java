package org.tautlog.cli.evidence;

import java.io.IOException;
import java.nio.file.Files;
import org.tautlog.archive.Archive;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.cli.terminal.ReportOptions;
import org.tautlog.cli.terminal.WrittenReport;
import org.tautlog.report.evidence.DossierCsv;
import org.tautlog.report.evidence.DossierJson;
import org.tautlog.report.evidence.DossierPage;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Provenance;
import org.tautlog.review.evidence.EngineDossier;

/** The files of a dossier: the table first, as page and PDF name its hash. */
final class DossierReports {
    private DossierReports() {}

    static WrittenReport write(EngineDossier dossier, Provenance provenance, ReportOptions options) throws IOException {
        var folder = options.folder();
        var name = "engine-" + ReportFile.name(dossier.serial());
        var table = ReportFile.write(folder, name + ".csv", file -> DossierCsv.write(dossier, file));
        var evidence = new Evidence(table.getFileName().toString(), Archive.sha256(table));
        var figures = ReportFile.write(
                folder,
                name + ".json",
                file -> file.append(DossierJson.of(dossier, provenance)).append('\n'));
        var print = folder.resolve(name + ".pdf");
        if (options.printed()) {
            ReportFile.print(folder, name + ".pdf", file -> DossierPage.print(dossier, provenance, evidence, file));
        } else {
            Files.deleteIfExists(print);
        }
        var page = ReportFile.write(
                folder, name + ".html", file -> DossierPage.write(dossier, provenance, evidence, file));
        return new WrittenReport(page, options.printed() ? print : null, table, figures);
    }
}
