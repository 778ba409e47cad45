package org.tautlog.report.page;

import java.time.OffsetDateTime;
import java.util.Objects;

/**
 * What made a report, and when.
 *
 * @param programVersion version of the program; never blank
 * @param writtenAt when the report was written
 * @param specificationFile the specification's file as its user named it; empty where it is not known
 */
public record Provenance(String programVersion, OffsetDateTime writtenAt, String specificationFile) {
    public Provenance {
        if (programVersion.isBlank()) {
            throw new IllegalArgumentException("programVersion is blank; a report names the program that made it");
        }
        Objects.requireNonNull(writtenAt, "writtenAt");
        Objects.requireNonNull(specificationFile, "specificationFile");
    }
}
