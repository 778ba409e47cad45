package org.tautlog.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Arrays;
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

    private static final String OWN_HASH = "\nSHA-256 of all above this line and the blank one: ";

    static final String BATCHES = "batches";
    static final String STAGING = "staging";
    static final String SEALS = "seals";
    static final String LEDGER = "ledger.jsonl";
    static final String LOCK = "lock";

    /** Everything that may lie in the folder itself. */
    static final Set<String> OURS = Set.of(READ_ME, BATCHES, STAGING, SEALS, LEDGER, LOCK);

    static ArchiveFolder create(Path root) throws IOException {
        var folder = new ArchiveFolder(root);
        if (folder.isDescribed()) {
            return folder;
        }
        if (Files.exists(root) && !Files.isDirectory(root)) {
            throw new NotDirectoryException(root + " is a file; an archive is a folder");
        }
        Files.createDirectories(root);
        if (!Files.exists(root.resolve(READ_ME))) {
            refuseWhatIsNotOurs(root);
        }
        Files.createDirectories(folder.batches());
        Files.createDirectories(folder.staging());
        return folder.inTurn(() -> {
            folder.describe();
            return folder;
        });
    }

    private static void refuseWhatIsNotOurs(Path root) throws IOException {
        for (var entry : Disk.list(root)) {
            if (!OURS.contains(entry.getFileName().toString())) {
                throw new ArchiveRefusal(root + " holds " + entry.getFileName()
                        + " and is no archive; name an empty or new folder, or an archive");
            }
        }
    }

    /** Whether its description is there, unaltered, by whichever version of the program it was written. */
    boolean hasWholeDescription() throws IOException {
        var file = root.resolve(READ_ME);
        if (!Files.exists(file)) {
            return false;
        }
        var text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        int end = text.lastIndexOf(OWN_HASH);
        return end >= 0
                && text.substring(end)
                        .equals(OWN_HASH + Disk.sha256(text.substring(0, end).getBytes(StandardCharsets.UTF_8)) + "\n");
    }

    /** Whether its description is there, as this program writes it. */
    private boolean isDescribed() throws IOException {
        var file = root.resolve(READ_ME);
        return Files.exists(file) && Arrays.equals(Files.readAllBytes(file), readMe());
    }

    /** Writes the description anew where it is not as this program writes it; the caller holds the archive's lock. */
    void describe() throws IOException {
        if (!isDescribed()) {
            var whole = staging().resolve(Disk.uniqueName("about-"));
            Disk.write(whole, readMe());
            Disk.move(whole, root.resolve(READ_ME));
        }
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

    /** The description with its own hash below it, by which any later version can tell that nobody touched it. */
    static byte[] readMe() {
        try (var stream = ArchiveFolder.class.getResourceAsStream(READ_ME)) {
            if (stream == null) {
                throw new IllegalStateException(READ_ME + " is missing from the program");
            }
            var text = new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
            return (text + OWN_HASH + Disk.sha256(text.getBytes(StandardCharsets.UTF_8)) + "\n")
                    .getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(READ_ME + " cannot be read from the program", e);
        }
    }
}
