package org.tautlog.report.evidence;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Pages;
import org.tautlog.report.page.Provenance;
import org.tautlog.review.evidence.EngineDossier;

/** An engine's dossier as one HTML page that needs nothing beside it. All text from logs and people is escaped. */
public final class DossierPage {
    private DossierPage() {}

    /**
     * Writes the page.
     *
     * @param dossier what is known
     * @param provenance what made it; the file named is the archive
     * @param evidence the table beside it
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(EngineDossier dossier, Provenance provenance, Evidence evidence, Writer out)
            throws IOException {
        Pages.write("dossier.ftlh", DossierModel.of(dossier, provenance, evidence), out);
    }

    /**
     * Prints the same page as a PDF, with identity, hash of the evidence and number on each of its pages.
     *
     * @param dossier what is known
     * @param provenance what made it
     * @param evidence the table beside it
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void print(EngineDossier dossier, Provenance provenance, Evidence evidence, OutputStream out)
            throws IOException {
        Pages.print("dossier.ftlh", DossierModel.of(dossier, provenance, evidence), provenance, out);
    }
}
