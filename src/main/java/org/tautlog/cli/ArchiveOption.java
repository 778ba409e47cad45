package org.tautlog.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.tautlog.archive.Archive;
import org.tautlog.archive.Stamp;
import picocli.CommandLine.Option;

/** The archive that a command works on, and what the command signs its writing with: program and time. */
final class ArchiveOption {
    @Option(names = "--archive", paramLabel = "DIR", required = true, description = "Folder of the archive.")
    private Path folder = Path.of("");

    Archive create() throws IOException {
        return Archive.create(folder);
    }

    Archive open() throws IOException {
        return Archive.open(folder);
    }

    Path folder() {
        return folder;
    }

    static Stamp stamp() {
        return new Stamp(Program.version(), OffsetDateTime.now(ZoneId.systemDefault()));
    }
}
