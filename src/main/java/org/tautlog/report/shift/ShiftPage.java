package org.tautlog.report.shift;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Pages;
import org.tautlog.report.page.Provenance;
import org.tautlog.review.ShiftReview;

/**
 * A shift review as one HTML page that needs nothing beside it: no network, no script, style and charts inside. All text
 * from logs is escaped.
 */
public final class ShiftPage {
    private ShiftPage() {}

    /**
     * Writes the page.
     *
     * @param review what was found
     * @param provenance what made it
     * @param evidence the table beside it
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(ShiftReview review, Provenance provenance, Evidence evidence, Writer out)
            throws IOException {
        Pages.write("shift.ftlh", ShiftModel.of(review, provenance, evidence), out);
    }

    /**
     * Prints the same page as a PDF, with identity, hash of the evidence and number on each of its pages.
     *
     * @param review what was found
     * @param provenance what made it
     * @param evidence the table beside it
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void print(ShiftReview review, Provenance provenance, Evidence evidence, OutputStream out)
            throws IOException {
        Pages.print("shift.ftlh", ShiftModel.of(review, provenance, evidence), provenance, out);
    }
}
