package org.tautlog.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where a command leaves its report, and whether it prints it. */
final class ReportOptions {
    @Option(names = "--out", paramLabel = "DIR", defaultValue = "reports", description = ReportFile.FOLDER)
    private Path folder = Path.of("");

    @Option(names = "--no-pdf", description = "Leave out the PDF, which takes the most time.")
    private boolean withoutPdf;

    Path folder() {
        return folder;
    }

    boolean printed() {
        return !withoutPdf;
    }
}
