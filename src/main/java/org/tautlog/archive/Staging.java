package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tautlog.archive.ledger.FolderLock;
import org.tautlog.archive.ledger.LedgerEvent;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;
import org.tautlog.archive.ledger.LedgerEvent.BatchesMerged;

/**
 * A batch while it is being written. It lies beside the batches until {@link #commit} renames it among them, in one step
 * that happens wholly or not at all; the lock beside it tells that its writer lives.
 */
final class Staging implements AutoCloseable {
    private static final String LOCK_ENDING = ".lock";
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT);

    private final ArchiveFolder archive;
    private final Stamp stamp;
    private final Path folder;
    private final FolderLock alive;

    private Staging(ArchiveFolder archive, Stamp stamp, Path folder, FolderLock alive) {
        this.archive = archive;
        this.stamp = stamp;
        this.folder = folder;
        this.alive = alive;
    }

    static Staging begin(ArchiveFolder archive, Stamp stamp) throws IOException {
        Files.createDirectories(archive.batches());
        Files.createDirectories(archive.staging());
        var prefix = NAME.format(stamp.time().withOffsetSameInstant(ZoneOffset.UTC)) + "-";
        return archive.inTurn(() -> {
            var folder = Files.createDirectory(archive.staging().resolve(Disk.uniqueName(prefix)));
            return new Staging(archive, stamp, folder, FolderLock.take(lockOf(folder)));
        });
    }

    Path folder() {
        return folder;
    }

    String batch() {
        return folder.getFileName().toString();
    }

    /** Writes the manifest and forces everything to the disk: from here on only the rename is missing. */
    void seal(Manifest manifest) throws IOException {
        for (var file : manifest.files()) {
            Disk.force(folder.resolve(file.name()));
        }
        Disk.write(folder.resolve(Manifest.FILE_NAME), manifest.toJson());
        Disk.force(folder);
    }

    /** The caller holds the archive's lock. Once renamed the batch counts, whatever comes of its line in the ledger. */
    void commit() throws IOException {
        Disk.move(folder, archive.batches().resolve(batch()));
        try {
            recordBatches(archive, stamp);
        } catch (IOException theNextWriterEntersIt) {
            return;
        }
    }

    /** Enters every batch into the ledger that is not in it: the newest, and any whose writer died before this line. */
    static int recordBatches(ArchiveFolder archive, Stamp stamp) throws IOException {
        var snapshot = Snapshot.of(archive);
        var known = snapshot.manifestsInLedger();
        var events = snapshot.present().stream()
                .filter(batch -> !known.containsKey(batch.name()))
                .map(Staging::event)
                .toList();
        if (!events.isEmpty()) {
            archive.ledger().append(events, stamp.time());
        }
        return events.size();
    }

    /** What writers left behind that live no more. */
    static List<Path> leftovers(ArchiveFolder archive) throws IOException {
        var left = new ArrayList<Path>();
        for (var path : Disk.list(archive.staging())) {
            if (!path.toString().endsWith(LOCK_ENDING)) {
                left.add(path);
            }
        }
        return left;
    }

    /** Deletes a leftover, unless its writer lives; the caller holds the archive's lock. */
    static boolean clear(Path leftover) throws IOException {
        var ofTheDead = FolderLock.tryTake(lockOf(leftover));
        if (ofTheDead.isEmpty()) {
            return false;
        }
        try {
            Disk.delete(leftover);
            Files.deleteIfExists(lockOf(leftover));
        } finally {
            ofTheDead.get().close();
        }
        return true;
    }

    @Override
    public void close() throws IOException {
        Disk.delete(folder);
        Files.deleteIfExists(lockOf(folder));
        alive.close();
    }

    private static Path lockOf(Path folder) {
        return folder.resolveSibling(folder.getFileName() + LOCK_ENDING);
    }

    private static LedgerEvent event(Snapshot.Batch batch) {
        var replaces = batch.manifest().replaces();
        return replaces.isEmpty()
                ? new BatchKept(batch.name(), batch.manifestSha256())
                : new BatchesMerged(batch.name(), batch.manifestSha256(), replaces);
    }
}
