package org.tautlog.cli.terminal;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where a command leaves its report, and whether it prints it. */
public final class ReportOptions {
    @Option(names = "--out", paramLabel = "DIR", defaultValue = "reports", description = ReportFile.FOLDER)
    private Path folder = Path.of("");

    @Option(names = "--no-pdf", description = "Leave out the PDF, which takes the most time.")
    private boolean withoutPdf;

    /** For the command line, which fills it. */
    public ReportOptions() {}

    /**
     * The folder to write to.
     *
     * @return the folder, perhaps not there yet
     */
    public Path folder() {
        return folder;
    }

    /**
     * Whether there is a PDF too.
     *
     * @return true unless it was left out
     */
    public boolean printed() {
        return !withoutPdf;
    }
}
