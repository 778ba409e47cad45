package org.tautlog.report.window;

import java.io.IOException;
import java.io.Writer;
import org.tautlog.report.page.Pages;
import org.tautlog.report.page.Provenance;
import org.tautlog.review.WindowReview;

/** A window study as one HTML page that needs nothing beside it: no network, no script, style and charts inside. */
public final class WindowPage {
    private WindowPage() {}

    /**
     * Writes the page.
     *
     * @param review what was found
     * @param provenance what made it
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(WindowReview review, Provenance provenance, Writer out) throws IOException {
        Pages.write("window.ftlh", WindowModel.of(review, provenance), out);
    }
}
