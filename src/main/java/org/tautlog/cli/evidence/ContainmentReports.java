package org.tautlog.cli.evidence;

import java.io.IOException;
import java.nio.file.Files;
import org.tautlog.archive.Archive;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.cli.terminal.ReportOptions;
import org.tautlog.cli.terminal.WrittenReport;
import org.tautlog.report.evidence.ContainmentCsv;
import org.tautlog.report.evidence.ContainmentJson;
import org.tautlog.report.evidence.ContainmentPage;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Provenance;

/** The files of a containment: the list first, as page and PDF name its hash. */
final class ContainmentReports {
    private static final String TABLE = "containment.csv";

    private ContainmentReports() {}

    static WrittenReport write(ContainRun.Found found, Provenance provenance, ReportOptions options)
            throws IOException {
        var hold = found.hold();
        var folder = options.folder();
        var table = ReportFile.write(folder, TABLE, file -> ContainmentCsv.write(hold, file));
        var evidence = new Evidence(TABLE, Archive.sha256(table));
        var figures = ReportFile.write(
                folder,
                "containment.json",
                file -> file.append(ContainmentJson.of(hold, found.shown(), provenance))
                        .append('\n'));
        var name = "containment.pdf";
        var print = folder.resolve(name);
        if (options.printed()) {
            ReportFile.print(folder, name, file -> ContainmentPage.print(hold, provenance, evidence, file));
        } else {
            Files.deleteIfExists(print);
        }
        var page = ReportFile.write(
                folder, "containment.html", file -> ContainmentPage.write(hold, provenance, evidence, file));
        return new WrittenReport(page, options.printed() ? print : null, table, figures);
    }
}
