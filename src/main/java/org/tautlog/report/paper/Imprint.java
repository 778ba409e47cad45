package org.tautlog.report.paper;

import java.time.OffsetDateTime;
import java.util.Objects;

/**
 * Who printed, and when: written into the file, so that printing the same page again gives the same bytes.
 *
 * @param program program and version; never blank
 * @param printedAt when the page was written
 */
public record Imprint(String program, OffsetDateTime printedAt) {
    public Imprint {
        if (program.isBlank()) {
            throw new IllegalArgumentException("program is blank; a printed page names the program that made it");
        }
        Objects.requireNonNull(printedAt, "printedAt");
    }
}
