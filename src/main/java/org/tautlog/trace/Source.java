package org.tautlog.trace;

import java.util.Objects;

/**
 * Where a trace was read.
 *
 * @param file the file as its user named it, with {@code !} before an entry of an archive
 * @param line 1-based line of the trace's first row in that file
 * @param sha256 hash of the file's bytes as read from disk, in lower-case hex; empty until the whole file was read
 */
public record Source(String file, int line, String sha256) {
    public Source {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(sha256, "sha256");
        if (line < 1) {
            throw new IllegalArgumentException("line is " + line + "; lines count from 1");
        }
    }
}
