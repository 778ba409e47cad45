package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.util.List;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.LedgerEvent.Decided;

/** An archive: a folder of immutable batches and the chain of what happened to it. Holds nothing open. */
public final class Archive {
    private final ArchiveFolder folder;

    private Archive(ArchiveFolder folder) {
        this.folder = folder;
    }

    /**
     * Opens an archive, or makes one of a new or empty folder.
     *
     * @param folder the folder
     * @return the archive
     * @throws IOException where the folder holds something else or cannot be written
     */
    public static Archive create(Path folder) throws IOException {
        return new Archive(ArchiveFolder.create(folder));
    }

    /**
     * Opens an archive that is there; nothing is written.
     *
     * @param folder the folder
     * @return the archive
     * @throws IOException where there is none
     */
    public static Archive open(Path folder) throws IOException {
        return new Archive(ArchiveFolder.open(folder));
    }

    /**
     * The hash by which an archive knows a file.
     *
     * @param file the file
     * @return SHA-256 of its bytes, in lower-case hex
     * @throws IOException where it cannot be read
     */
    public static String sha256(Path file) throws IOException {
        return Disk.sha256(file);
    }

    /** {@return the folder} */
    public Path folder() {
        return folder.root();
    }

    /**
     * Begins an import. Several may run at once, in this process or in others.
     *
     * @param stamp who imports, and when
     * @param specification what judges
     * @return the import, to be committed and closed
     * @throws IOException where the archive cannot be read, or the specification's version was used with other contents
     */
    public Importer importer(Stamp stamp, SpecificationUsed specification) throws IOException {
        return new Importer(folder, stamp, specification);
    }

    /** {@return questions to the archive, to be closed; the engine behind them starts with the first} */
    public ArchiveQuery query() {
        return new ArchiveQuery(folder);
    }

    /**
     * Records a decision.
     *
     * @param decision the decision
     * @param stamp who records it, and when
     * @return the decision as it stands in the ledger
     * @throws IOException where it cannot be written; it does not count then
     */
    public KeptDecision decide(Decision decision, Stamp stamp) throws IOException {
        return folder.inTurn(() -> {
            Staging.recordBatches(folder, stamp);
            var entry = folder.ledger()
                    .append(List.of(new Decided(decision)), stamp.time())
                    .get(0);
            return new KeptDecision(entry.number(), entry.time(), decision, true, entry.previous(), entry.sha256());
        });
    }

    /**
     * Merges small batches, which changes no answer, clears what killed writers left, and writes {@code ARCHIVE.md} anew
     * where it is not as this program writes it.
     *
     * @param stamp who tidies, and when
     * @return what was done
     * @throws IOException where the archive cannot be read or written
     */
    public Tidied tidy(Stamp stamp) throws IOException {
        return new Tidy(folder, stamp).run();
    }

    /**
     * Hashes every file, holds every row against its hash and walks the chain. Seals are held against the chain, their
     * signatures are not checked.
     *
     * @return what was altered, is missing or was added
     * @throws IOException where the archive cannot be read
     */
    public Verification verify() throws IOException {
        return verify(() -> {});
    }

    /**
     * Does what {@link #verify()} does, and tells how far it is.
     *
     * @param eachBatch run after each batch
     * @return what was altered, is missing or was added
     * @throws IOException where the archive cannot be read
     */
    public Verification verify(Runnable eachBatch) throws IOException {
        return new Verifier(folder, null, List.of(), eachBatch).run();
    }

    /**
     * Does what {@link #verify()} does, and checks the signatures of seals.
     *
     * @param key the public key of whoever seals
     * @param sealsElsewhere seals that were kept outside of the archive: files of their texts, signatures beside them
     * @param eachBatch run after each batch
     * @return what was altered, is missing or was added
     * @throws IOException where the archive or a seal cannot be read
     */
    public Verification verify(PublicKey key, List<Path> sealsElsewhere, Runnable eachBatch) throws IOException {
        return new Verifier(folder, key, sealsElsewhere, eachBatch).run();
    }

    /**
     * Seals the state of the chain: keep a copy of both files elsewhere. A broken chain is not sealed, as the seal would
     * make the break look like a part of the record.
     *
     * @param key the sealer's key
     * @param by who seals
     * @param stamp which program, and when
     * @return the file of the seal's text; its signature lies beside it
     * @throws IOException where the chain is broken, or the seal cannot be written
     */
    public Path seal(PrivateKey key, String by, Stamp stamp) throws IOException {
        return folder.inTurn(() -> {
            Staging.recordBatches(folder, stamp);
            var broken = Snapshot.of(folder).brokenChain();
            if (!broken.isEmpty()) {
                throw new ArchiveRefusal("the chain is broken at "
                        + broken.get(0).where() + ", so that no seal is set on it; verify the archive");
            }
            return Seals.write(folder, key, by, stamp.time());
        });
    }
}
