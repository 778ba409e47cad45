package org.tautlog.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.Archive;
import org.tautlog.archive.JudgementFilter;
import picocli.CommandLine.Option;

/** Which part of an archive stands in for logs. */
final class ArchivedShiftInputs {
    @Option(names = "--archive", paramLabel = "DIR", description = "Take what an archive kept instead of LOGS.")
    private @Nullable Path folder;

    @Option(names = "--station", paramLabel = "S", description = "Of the archive, only this station.")
    private String station = "";

    @Option(names = "--from", paramLabel = "TIME", description = "Of the archive, from this time on (ISO 8601).")
    private @Nullable OffsetDateTime from;

    @Option(names = "--to", paramLabel = "TIME", description = "Of the archive, before this time (ISO 8601).")
    private @Nullable OffsetDateTime to;

    boolean given(LogInputs logs) {
        if (folder == null && (from != null || to != null || !station.isEmpty())) {
            throw Refusal.wrongUse("--station, --from and --to pick from an archive; name it with --archive DIR");
        }
        if (folder != null && logs.given()) {
            throw Refusal.wrongUse("both LOGS and --archive are named; name one of them");
        }
        return folder != null;
    }

    Archive open() throws IOException {
        return Archive.open(folder == null ? Path.of("") : folder);
    }

    JudgementFilter filter() {
        return JudgementFilter.everything().stream(station, "", "").between(from, to);
    }

    String words() {
        return "archive " + folder;
    }
}
