package org.tautlog.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Set;
import org.tautlog.archive.ledger.FolderLock;
import org.tautlog.archive.ledger.Ledger;

/**
 * Where things lie in an archive's folder.
 *
 * @param root the folder
 */
record ArchiveFolder(Path root) {
    /** Says what the folder is and how to read it without this program; also marks it as an archive. */
    static final String READ_ME = "ARCHIVE.md";

    static final String BATCHES = "batches";
    static final String STAGING = "staging";
    static final String SEALS = "seals";
    static final String LEDGER = "ledger.jsonl";
    static final String LOCK = "lock";

    /** Everything that may lie in the folder itself. */
    static final Set<String> OURS = Set.of(READ_ME, BATCHES, STAGING, SEALS, LEDGER, LOCK);

    static ArchiveFolder create(Path root) throws IOException {
        var folder = new ArchiveFolder(root);
        if (Files.exists(root.resolve(READ_ME))) {
            return folder;
        }
        if (Files.exists(root) && !Files.isDirectory(root)) {
            throw new NotDirectoryException(root + " is a file; an archive is a folder");
        }
        Files.createDirectories(root);
        for (var entry : Disk.list(root)) {
            if (!OURS.contains(entry.getFileName().toString())) {
                throw new ArchiveRefusal(root + " holds " + entry.getFileName()
                        + " and is no archive; name an empty or new folder, or an archive");
            }
        }
        Files.createDirectories(folder.batches());
        Files.createDirectories(folder.staging());
        return folder.inTurn(() -> {
            if (!Files.exists(root.resolve(READ_ME))) {
                var whole = folder.staging().resolve(Disk.uniqueName("about-"));
                Disk.write(whole, readMe().getBytes(StandardCharsets.UTF_8));
                Disk.move(whole, root.resolve(READ_ME));
            }
            return folder;
        });
    }

    static ArchiveFolder open(Path root) throws IOException {
        var folder = new ArchiveFolder(root);
        if (!Files.isDirectory(root)) {
            throw new ArchiveRefusal("there is no archive " + root);
        }
        if (!Files.exists(root.resolve(READ_ME)) && !Files.isDirectory(folder.batches())) {
            throw new ArchiveRefusal(root + " is no archive: it has neither " + READ_ME + " nor " + BATCHES);
        }
        return folder;
    }

    Path batches() {
        return root.resolve(BATCHES);
    }

    Path staging() {
        return root.resolve(STAGING);
    }

    Path seals() {
        return root.resolve(SEALS);
    }

    Ledger ledger() {
        return new Ledger(root.resolve(LEDGER));
    }

    /** Does what one writer at a time may do. */
    <R> R inTurn(FolderLock.Work<R> work) throws IOException {
        return FolderLock.whileHeld(root.resolve(LOCK), work);
    }

    static String readMe() {
        try (var stream = ArchiveFolder.class.getResourceAsStream(READ_ME)) {
            if (stream == null) {
                throw new IllegalStateException(READ_ME + " is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(READ_ME + " cannot be read from the program", e);
        }
    }
}
