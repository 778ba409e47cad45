package org.tautlog.report.page;

import java.util.regex.Pattern;

/**
 * The table that lies beside a report and holds every tightening with its file, line and hash: what the report stands on.
 *
 * @param file name of the table's file; never blank
 * @param sha256 SHA-256 of the file, in lower-case hex
 */
public record Evidence(String file, String sha256) {
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    public Evidence {
        if (file.isBlank()) {
            throw new IllegalArgumentException("file is blank; a report names the table that it stands on");
        }
        if (!HASH.matcher(sha256).matches()) {
            throw new IllegalArgumentException("sha256 is '" + sha256 + "'; a SHA-256 has 64 digits of lower-case hex");
        }
    }
}
