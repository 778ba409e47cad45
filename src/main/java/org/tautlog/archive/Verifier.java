package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.BatchCheck.Found;
import org.tautlog.archive.SealCheck.Signed;
import org.tautlog.archive.Snapshot.Batch;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Checks everything; waits for no writer, and starts again where one changed the batches meanwhile. */
final class Verifier {
    private static final int MOST_STARTS = 5;
    private static final String NOT_OURS = "nothing of the archive belongs there";

    private final ArchiveFolder archive;
    private final @Nullable PublicKey key;
    private final List<Path> sealsElsewhere;
    private final Runnable eachBatch;
    private int provenEntries;

    Verifier(ArchiveFolder archive, @Nullable PublicKey key, List<Path> sealsElsewhere, Runnable eachBatch) {
        this.archive = archive;
        this.key = key;
        this.sealsElsewhere = sealsElsewhere;
        this.eachBatch = eachBatch;
    }

    Verification run() throws IOException {
        var snapshot = Snapshot.of(archive);
        var found = check(snapshot);
        for (int start = 1; start < MOST_STARTS && !found.isWhole(); start++) {
            var now = Snapshot.of(archive);
            if (now.present().equals(snapshot.present()) && now.ledger().equals(snapshot.ledger())) {
                return found;
            }
            snapshot = now;
            found = check(snapshot);
        }
        return found;
    }

    private Verification check(Snapshot snapshot) throws IOException {
        var problems = new ArrayList<>(snapshot.problems());
        if (snapshot.ledger().entries().isEmpty()
                && !snapshot.present().isEmpty()
                && !problems.contains(Snapshot.emptyLedger())) {
            problems.add(Snapshot.emptyLedger());
        }
        int files = 0;
        long rows = 0;
        for (var found : checkBatches(snapshot)) {
            problems.addAll(found.problems());
            files += found.files();
            rows += found.rows();
        }
        checkCovered(snapshot, problems);
        checkSourcesOnce(snapshot, problems);
        checkFolder(problems);
        var seals = checkSeals(snapshot, problems);
        return new Verification(
                snapshot.ledger().entries().size(),
                snapshot.ledger().head(),
                snapshot.batches().size(),
                files,
                rows,
                problems,
                seals,
                provenEntries,
                (int) snapshot.batches().stream()
                        .filter(batch -> batch.manifest().ledgerHead().isEmpty())
                        .count());
    }

    /** One batch after the other: two at once took longer and more memory. */
    private List<Found> checkBatches(Snapshot snapshot) throws IOException {
        var check = new BatchCheck(snapshot);
        var all = new ArrayList<Found>();
        for (var batch : snapshot.present()) {
            all.add(check.check(batch));
            eachBatch.run();
        }
        return all;
    }

    /** Every batch that ever came in must be there still: itself or, by its manifest and rows, within a merged one. */
    private static void checkCovered(Snapshot snapshot, List<Problem> problems) throws IOException {
        Map<String, String> there = new LinkedHashMap<>();
        for (var batch : snapshot.batches()) {
            there.put(batch.name(), batch.manifestSha256());
            for (var file : batch.manifest().files()) {
                var original = Tidy.batchOfManifest(file.name());
                if (original.isPresent() && holdsPartsOf(batch, file)) {
                    there.put(original.get(), file.sha256());
                }
            }
        }
        for (var entry : snapshot.ledger().entries()) {
            if (entry.event() instanceof BatchKept kept
                    && !kept.manifestSha256().equals(there.get(kept.batch()))
                    && problems.stream().noneMatch(problem -> isLossOf(kept.batch(), problem))) {
                problems.add(new Problem(
                        ProblemCode.MISSING,
                        Where.line(ArchiveFolder.LEDGER, entry.number()),
                        "the rows of batch " + kept.batch() + " are in no batch that counts",
                        "",
                        "import its sources again, or copy it from where it is whole"));
            }
        }
    }

    private static boolean isLossOf(String batch, Problem problem) {
        return (problem.code() == ProblemCode.ALTERED || problem.code() == ProblemCode.MISSING)
                && problem.where().file().contains(batch);
    }

    /** An altered or missing one is named where files are held against their hashes; it vouches for nothing here. */
    private static boolean holdsPartsOf(Batch merged, Manifest.DataFile originalManifest) throws IOException {
        var path = merged.folder().resolve(originalManifest.name());
        if (!Files.exists(path)) {
            return false;
        }
        var bytes = Files.readAllBytes(path);
        return Disk.sha256(bytes).equals(originalManifest.sha256())
                && merged.manifest().parts().containsAll(Manifest.parse(bytes).parts());
    }

    private static void checkSourcesOnce(Snapshot snapshot, List<Problem> problems) {
        Map<String, String> batches = new LinkedHashMap<>();
        for (var batch : snapshot.batches()) {
            for (var source : batch.manifest().sources()) {
                var other = batches.putIfAbsent(source.sha256(), batch.name());
                if (other != null) {
                    problems.add(new Problem(
                            ProblemCode.UNEXPECTED,
                            Where.file(ArchiveFolder.BATCHES + "/" + batch.name()),
                            "the traces of " + source.file() + " are in batch " + other + " too",
                            "",
                            "find out who put the batch there"));
                }
            }
        }
    }

    private void checkFolder(List<Problem> problems) throws IOException {
        if (!archive.hasWholeDescription()) {
            problems.add(new Problem(
                    ProblemCode.ALTERED,
                    Where.file(ArchiveFolder.READ_ME),
                    "the description is missing or was altered: it is not what its own last line says",
                    "",
                    "tidy the archive, which writes it anew; no evidence lies in it"));
        }
        for (var path : Disk.list(archive.root())) {
            if (!ArchiveFolder.OURS.contains(path.getFileName().toString())) {
                problems.add(unexpected(path.getFileName().toString()));
            }
        }
        for (var path : Disk.list(archive.batches())) {
            if (!Files.isDirectory(path)) {
                problems.add(unexpected(ArchiveFolder.BATCHES + "/" + path.getFileName()));
            }
        }
        for (var path : Disk.list(archive.seals())) {
            if (!Seals.isOfSeal(path)) {
                problems.add(unexpected(ArchiveFolder.SEALS + "/" + path.getFileName()));
            }
        }
        for (var name : Seals.missing(archive)) {
            problems.add(new Problem(
                    ProblemCode.MISSING,
                    Where.file(ArchiveFolder.SEALS + "/" + name),
                    "a part of a seal is missing: it was taken away, or its sealer was killed",
                    "",
                    "copy it again from where it is kept; a part that is all there ever was may be moved away"));
        }
        for (var path : Staging.leftovers(archive)) {
            problems.add(leftover(
                    ArchiveFolder.STAGING + "/" + path.getFileName(), "a writer works on it, or was killed at it"));
        }
    }

    private List<SealCheck> checkSeals(Snapshot snapshot, List<Problem> problems) throws IOException {
        var texts = new ArrayList<>(Seals.texts(archive));
        texts.addAll(sealsElsewhere);
        var checks = new ArrayList<SealCheck>();
        provenEntries = 0;
        for (var text : texts) {
            try {
                var check = Seals.check(text, snapshot.ledger(), key);
                checks.add(check);
                if (check.onChain() && check.signed() == Signed.BY_THE_KEY && isElsewhere(text)) {
                    provenEntries = Math.max(provenEntries, check.seal().entries());
                }
                if (!check.onChain()) {
                    problems.add(altered(
                            text.toString(),
                            "the seal's state is not on the chain: one of its first "
                                    + check.seal().entries() + " entries was altered or removed"));
                }
                if (check.signed() == Signed.NOT_BY_THE_KEY) {
                    problems.add(altered(text.toString(), "the seal is not signed by the key given"));
                }
            } catch (IllegalArgumentException e) {
                problems.add(altered(text.toString(), "the file is not the text of a seal"));
            }
        }
        return checks;
    }

    /** A seal within the archive proves nothing of the end: whoever cuts the chain there deletes the seal too. */
    private boolean isElsewhere(Path text) {
        return !text.toAbsolutePath()
                .normalize()
                .startsWith(archive.root().toAbsolutePath().normalize());
    }

    static Problem altered(String place, String what) {
        return new Problem(ProblemCode.ALTERED, Where.file(place), what, "", "copy it again from where it is whole");
    }

    static Problem unexpected(String place) {
        return new Problem(
                ProblemCode.UNEXPECTED, Where.file(place), NOT_OURS, "", "find out who put it there, and move it away");
    }

    static Problem leftover(String place, String what) {
        return new Problem(ProblemCode.LEFTOVER, Where.file(place), what, "", "tidy the archive");
    }
}
