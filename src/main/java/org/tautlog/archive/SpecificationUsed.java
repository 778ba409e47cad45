package org.tautlog.archive;

import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * The specification that judges, as it was stated: kept with the judgements.
 *
 * @param name name of the specification
 * @param version its version
 * @param text the text of its file; empty where it was not a file
 */
public record SpecificationUsed(String name, String version, String text) {
    public SpecificationUsed {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(version, "version");
        Objects.requireNonNull(text, "text");
    }

    /** {@return the hash of the text in UTF-8, in lower-case hex; empty where there is no text} */
    public String sha256() {
        return text.isEmpty() ? "" : Disk.sha256(text.getBytes(StandardCharsets.UTF_8));
    }
}
