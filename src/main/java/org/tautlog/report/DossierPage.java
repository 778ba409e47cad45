package org.tautlog.report;

import java.io.IOException;
import java.io.Writer;
import org.tautlog.review.evidence.EngineDossier;

/** An engine's dossier as one HTML page that needs nothing beside it. All text from logs and people is escaped. */
public final class DossierPage {
    private DossierPage() {}

    /**
     * Writes the page.
     *
     * @param dossier what is known
     * @param provenance what made it; the file named is the archive
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(EngineDossier dossier, Provenance provenance, Writer out) throws IOException {
        Pages.write("dossier.ftlh", DossierModel.of(dossier, provenance), out);
    }
}
