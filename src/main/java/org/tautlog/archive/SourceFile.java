package org.tautlog.archive;

import java.util.Objects;

/**
 * A file that was imported.
 *
 * @param file the file as its user named it
 * @param sha256 hash of its bytes, in lower-case hex
 */
public record SourceFile(String file, String sha256) {
    public SourceFile {
        Objects.requireNonNull(file, "file");
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    "sha256 of " + file + " is '" + sha256 + "'; a SHA-256 in lower-case hex is needed");
        }
    }
}
