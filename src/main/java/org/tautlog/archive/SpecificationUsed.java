package org.tautlog.archive;

import java.util.Objects;

/**
 * The specification and the program that judged.
 *
 * @param name name of the specification
 * @param version its version
 * @param sha256 hash of its file's bytes, in lower-case hex; empty where it was not a file
 * @param text the file itself, kept with the judgements; empty where it was not a file
 */
public record SpecificationUsed(String name, String version, String sha256, String text) {
    public SpecificationUsed {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(version, "version");
        Objects.requireNonNull(sha256, "sha256");
        Objects.requireNonNull(text, "text");
    }
}
