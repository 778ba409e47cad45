package org.tautlog.cli.evidence;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.tautlog.archive.Archive;
import org.tautlog.archive.Stamp;
import org.tautlog.cli.terminal.Program;
import org.tautlog.report.page.Provenance;
import picocli.CommandLine.Option;

/** The archive that a command works on, and what the command signs its writing with: program and time. */
public final class ArchiveOption {
    @Option(names = "--archive", paramLabel = "DIR", required = true, description = "Folder of the archive.")
    private Path folder = Path.of("");

    /** For the command line, which fills it. */
    public ArchiveOption() {}

    /**
     * The archive, made where there is none.
     *
     * @return the archive
     * @throws IOException if it cannot be made or opened
     */
    public Archive create() throws IOException {
        return Archive.create(folder);
    }

    /**
     * The archive that is there.
     *
     * @return the archive
     * @throws IOException if there is none
     */
    public Archive open() throws IOException {
        return Archive.open(folder);
    }

    /**
     * Its folder.
     *
     * @return the folder as given
     */
    public Path folder() {
        return folder;
    }

    /**
     * What a report out of this archive says of its making.
     *
     * @return program version, the time now and the folder
     */
    Provenance provenance() {
        var stamp = stamp();
        return new Provenance(stamp.program(), stamp.time(), folder.toString());
    }

    /**
     * What a command signs its writing with: program version and the time now.
     *
     * @return the stamp
     */
    public static Stamp stamp() {
        return new Stamp(Program.version(), OffsetDateTime.now(ZoneId.systemDefault()));
    }
}
