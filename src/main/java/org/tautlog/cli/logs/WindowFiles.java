package org.tautlog.cli.logs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Locale;
import org.tautlog.cli.terminal.Program;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.window.WindowPage;
import org.tautlog.review.WindowReview;

/** The files that a window study leaves. */
final class WindowFiles {
    private WindowFiles() {}

    static Path page(Path folder, WindowReview review, Path specification) throws IOException {
        var now = OffsetDateTime.now(ZoneId.systemDefault());
        var provenance = new Provenance(Program.version(), now, specification.toString());
        return ReportFile.write(folder, "window.html", out -> WindowPage.write(review, provenance, out));
    }

    /** A released specification is never overwritten: the file must be new. */
    static void proposal(Path file, WindowReview review) throws IOException {
        if (Files.exists(file)) {
            throw Refusal.wrongUse(file + " exists; name a new file with --propose FILE");
        }
        var heading = String.format(
                Locale.ROOT,
                "# A draft from a tolerance study: %d draws, seed %d, coverage %s. Not released.%n"
                        + "# Prove it on instrumented bolts; give it a version of its own when it is released.%n%n",
                review.result().draws(),
                review.result().seed(),
                review.study().coverage());
        Files.writeString(
                file,
                heading.replace(System.lineSeparator(), "\n") + SpecificationFile.write(review.proposed()),
                StandardOpenOption.CREATE_NEW);
    }
}
