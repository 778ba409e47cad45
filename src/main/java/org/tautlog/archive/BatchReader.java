package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.tautlog.archive.Snapshot.Batch;
import org.tautlog.archive.ledger.Ledger;

/**
 * Reads the chain, again where it differs, and batches' manifests, each once: a batch never changes. Whether its files are
 * there is for others to look.
 */
final class BatchReader {
    private final Ledger ledger;
    private final Map<Path, Batch> read = new HashMap<>();

    BatchReader(ArchiveFolder folder) {
        ledger = folder.ledger();
    }

    Ledger.Reading ledger() throws IOException {
        return ledger.read();
    }

    /** Throws IllegalArgumentException where the manifest is there and is none. */
    Batch read(Path folder) throws IOException {
        var known = read.get(folder);
        if (known == null) {
            var json = Files.readAllBytes(folder.resolve(Manifest.FILE_NAME));
            known = new Batch(folder, Disk.sha256(json), Manifest.parse(json));
            read.put(folder, known);
        }
        return known;
    }
}
