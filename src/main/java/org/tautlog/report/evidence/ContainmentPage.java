package org.tautlog.report.evidence;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Pages;
import org.tautlog.report.page.Provenance;
import org.tautlog.review.evidence.EngineHold;

/** A containment as one HTML page that needs nothing beside it, or as PDF. All text from logs is escaped. */
public final class ContainmentPage {
    private ContainmentPage() {}

    /**
     * Writes the page.
     *
     * @param hold the engines that are held
     * @param provenance what made it; the file named is the archive
     * @param evidence the table beside it
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(EngineHold hold, Provenance provenance, Evidence evidence, Writer out) throws IOException {
        Pages.write("containment.ftlh", ContainmentModel.of(hold, provenance, evidence), out);
    }

    /**
     * Prints the same page as a PDF.
     *
     * @param hold the engines that are held
     * @param provenance what made it; the file named is the archive
     * @param evidence the table beside it
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void print(EngineHold hold, Provenance provenance, Evidence evidence, OutputStream out)
            throws IOException {
        var model = ContainmentModel.of(hold, provenance, evidence);
        Pages.print("containment.ftlh", model, provenance, out);
    }
}
