package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tautlog.archive.EnteredBatches.Standing;
import org.tautlog.archive.Snapshot.Batch;
import org.tautlog.problem.Problem;

/** Checks single batches of a snapshot: files, rows and manifest. */
final class BatchCheck {
    private final Set<Batch> counting;
    private final Set<String> replaced;
    private final EnteredBatches entered;

    BatchCheck(Snapshot snapshot) {
        counting = Set.copyOf(snapshot.batches());
        replaced = snapshot.replaced().keySet();
        entered = snapshot.entered();
    }

    /**
     * What a batch was found to be.
     *
     * @param files how many files were read
     * @param rows how many rows were held against their hashes
     * @param problems what was altered, is missing or was added
     */
    record Found(int files, long rows, List<Problem> problems) {}

    /** Checks one; the engine lives as long as that and gives all of its memory back. */
    Found check(Batch batch) throws IOException {
        var problems = new ArrayList<Problem>();
        checkPlace(batch, problems);
        int files = checkFiles(batch, problems);
        if (!counting.contains(batch)) {
            return new Found(files, 0, problems);
        }
        try (var rows = new RowCheck()) {
            problems.addAll(rows.check(batch.folder(), batch.manifest()));
            return new Found(files, rows.rows(), problems);
        }
    }

    private void checkPlace(Batch batch, List<Problem> problems) {
        if (entered.of(batch) == Standing.AWAITED) {
            problems.add(Verifier.leftover(
                    place(batch),
                    "the batch counts, and is not in the ledger yet: its writer was killed,"
                            + " or its entry was taken off the end"));
        }
        if (replaced.contains(batch.name())) {
            problems.add(Verifier.leftover(place(batch), "another batch holds these rows now"));
        }
    }

    private static int checkFiles(Batch batch, List<Problem> problems) throws IOException {
        var known = new HashSet<>(Set.of(Manifest.FILE_NAME));
        int files = 1;
        for (var file : batch.manifest().files()) {
            known.add(file.name());
            var path = batch.folder().resolve(file.name());
            if (Files.exists(path)) {
                files++;
                if (Files.size(path) == file.bytes() && !Disk.sha256(path).equals(file.sha256())) {
                    problems.add(altered(batch, file.name(), "the file's bytes were altered"));
                }
            }
        }
        for (var path : Disk.list(batch.folder())) {
            if (!known.contains(path.getFileName().toString())) {
                problems.add(Verifier.unexpected(place(batch) + "/" + path.getFileName()));
            }
        }
        return files;
    }

    private static String place(Batch batch) {
        return ArchiveFolder.BATCHES + "/" + batch.name();
    }

    private static Problem altered(Batch batch, String file, String what) {
        return Verifier.altered(place(batch) + "/" + file, what);
    }
}
