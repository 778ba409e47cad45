package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tautlog.archive.EnteredBatches.Standing;
import org.tautlog.archive.Snapshot.Batch;
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

    /** Forces the files to the disk: from here on only the manifest and the rename are missing. */
    void force(Manifest manifest) throws IOException {
        for (var file : manifest.files()) {
            Disk.force(folder.resolve(file.name()));
        }
    }

    /**
     * The caller holds the archive's lock. The manifest names the end of the chain, so that nobody can put the batch
     * elsewhere. Once renamed the batch counts, whatever comes of its line in the ledger.
     */
    void commit(Manifest manifest) throws IOException {
        recordBatches(archive, stamp);
        var ledger = archive.ledger();
        var json = manifest.following(ledger.read().head()).toJson();
        Disk.write(folder.resolve(Manifest.FILE_NAME), json);
        Disk.force(folder);
        var batch = new Batch(archive.batches().resolve(batch()), Disk.sha256(json), manifest);
        Disk.move(folder, batch.folder());
        try {
            ledger.append(List.of(event(batch)), stamp.time());
        } catch (IOException theNextWriterEntersIt) {
            return;
        }
    }

    /**
     * Enters the batch whose writer died before this line. As each writer does so before anything else, and the lock is
     * held, there is one at most; whatever else is not in the ledger was put there, and stays out of it.
     */
    static int recordBatches(ArchiveFolder archive, Stamp stamp) throws IOException {
        var snapshot = Snapshot.of(archive);
        var chain = snapshot.entered();
        var events = snapshot.present().stream()
                .filter(batch -> chain.of(batch) == Standing.AWAITED)
                .limit(1)
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

    private static LedgerEvent event(Batch batch) {
        var replaces = batch.manifest().replaces();
        return replaces.isEmpty()
                ? new BatchKept(batch.name(), batch.manifestSha256())
                : new BatchesMerged(batch.name(), batch.manifestSha256(), replaces);
    }
}
