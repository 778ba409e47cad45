package org.tautlog.report;

import java.io.IOException;
import java.io.Writer;
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
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(ShiftReview review, Provenance provenance, Writer out) throws IOException {
        Pages.write("shift.ftlh", ShiftModel.of(review, provenance), out);
    }
}
