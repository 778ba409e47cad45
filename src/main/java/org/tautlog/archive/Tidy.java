package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tautlog.archive.EnteredBatches.Standing;
import org.tautlog.archive.Manifest.DataFile;
import org.tautlog.archive.Snapshot.Batch;
import org.tautlog.archive.table.Table;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * Merges small batches and clears what dead writers left. A merged batch holds the same rows, with the manifests of those
 * whose place it takes; it is read back, row by row, before it counts and again before they go. Where the chain is broken,
 * all stays as it is.
 */
final class Tidy {
    private static final String MANIFEST_OF = "manifest-of-";
    private static final String JSON = ".json";
    private static final int SMALL_ROWS = 5_000;
    private static final int MOST_ROWS = 20_000;

    private final ArchiveFolder archive;
    private final Stamp stamp;
    private final List<String> cleared = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private int merged;
    private int into;

    Tidy(ArchiveFolder archive, Stamp stamp) {
        this.archive = archive;
        this.stamp = stamp;
    }

    Tidied run() throws IOException {
        Files.createDirectories(archive.staging());
        int entered = archive.inTurn(() -> {
            archive.describe();
            return Staging.recordBatches(archive, stamp);
        });
        var broken = Snapshot.of(archive).brokenChain();
        if (!broken.isEmpty()) {
            return new Tidied(entered, List.of(), 0, 0, broken);
        }
        clear();
        for (var group : groups(entered())) {
            try {
                merge(group);
            } catch (IOException e) {
                problems.add(new Problem(
                        ProblemCode.NOT_WRITABLE,
                        Where.file(archive.root().toString()),
                        group.size() + " batches were not merged: " + e.getMessage(),
                        "",
                        "nothing is lost; verify the archive, then tidy it again"));
            }
        }
        clear();
        return new Tidied(entered, cleared, merged, into, problems);
    }

    /** The batch whose manifest a file in a merged batch is; empty where the file is something else. */
    static Optional<String> batchOfManifest(String fileName) {
        return fileName.startsWith(MANIFEST_OF) && fileName.endsWith(JSON)
                ? Optional.of(fileName.substring(MANIFEST_OF.length(), fileName.length() - JSON.length()))
                : Optional.empty();
    }

    private void clear() throws IOException {
        var checked = replacedByWhole(Snapshot.of(archive));
        archive.inTurn(() -> {
            checked.retainAll(Snapshot.of(archive).replaced().keySet());
            for (var name : checked) {
                Disk.move(archive.batches().resolve(name), archive.staging().resolve(name));
            }
            for (var leftover : Staging.leftovers(archive)) {
                if (Staging.clear(leftover)) {
                    cleared.add(leftover.getFileName().toString());
                }
            }
            return cleared.size();
        });
    }

    /** The batches that may go, as every file and row of those that take their place was read. */
    private Set<String> replacedByWhole(Snapshot snapshot) throws IOException {
        var check = new BatchCheck(snapshot);
        var replaced = snapshot.replaced();
        var names = new LinkedHashSet<>(replaced.keySet());
        for (var merged : Set.copyOf(replaced.values())) {
            if (!check.check(merged).problems().isEmpty()) {
                names.removeIf(name -> merged.equals(replaced.get(name)));
                notCleared(merged);
            }
        }
        return names;
    }

    private void notCleared(Batch merged) {
        var problem = Verifier.altered(
                ArchiveFolder.BATCHES + "/" + merged.name(),
                "the batch is not as it was kept; those whose place it takes were left where they are");
        if (!problems.contains(problem)) {
            problems.add(problem);
        }
    }

    /** A merged batch proves what the chain names; what it does not name is left where anybody can see it. */
    private List<Batch> entered() throws IOException {
        var snapshot = Snapshot.of(archive);
        var chain = snapshot.entered();
        return snapshot.batches().stream()
                .filter(batch -> chain.of(batch) == Standing.ENTERED)
                .toList();
    }

    private static List<List<Batch>> groups(List<Batch> batches) {
        var groups = new ArrayList<List<Batch>>();
        var open = new ArrayList<Batch>();
        int rows = 0;
        for (var batch : batches) {
            int more = rows(batch);
            if (more >= SMALL_ROWS) {
                continue;
            }
            if (rows + more > MOST_ROWS) {
                groups.add(List.copyOf(open));
                open.clear();
                rows = 0;
            }
            open.add(batch);
            rows += more;
        }
        groups.add(List.copyOf(open));
        groups.removeIf(group -> group.size() < 2);
        return groups;
    }

    private static int rows(Batch batch) {
        return batch.manifest().files().stream().mapToInt(DataFile::rows).sum();
    }

    private void merge(List<Batch> group) throws IOException {
        var staging = Staging.begin(archive, stamp);
        try {
            var files = new LinkedHashMap<String, DataFile>();
            var writer = new BatchWriter(staging.folder(), staging.batch());
            try {
                for (var table : Table.all()) {
                    writer.copy(table, group);
                }
                writer.files().forEach(file -> files.put(file.name(), file));
            } finally {
                writer.close();
            }
            for (var batch : group) {
                carryAlong(batch, staging, files);
            }
            var manifest = manifest(group, List.copyOf(files.values()));
            checkRows(staging, manifest);
            staging.force(manifest);
            archive.inTurn(() -> {
                var present =
                        Snapshot.of(archive).batches().stream().map(Batch::name).toList();
                if (!present.containsAll(manifest.replaces())) {
                    throw new IOException("another run merged some of them meanwhile");
                }
                staging.commit(manifest);
                return staging.batch();
            });
            merged += group.size();
            into++;
        } finally {
            staging.close();
        }
    }

    private Manifest manifest(List<Batch> group, List<DataFile> files) {
        var manifests = group.stream().map(Batch::manifest).toList();
        return new Manifest(
                Table.SCHEMA_VERSION,
                stamp.program(),
                stamp.time().toString(),
                manifests.stream().flatMap(one -> one.sources().stream()).toList(),
                manifests.stream().flatMap(one -> one.judged().stream()).toList(),
                manifests.stream().flatMap(one -> one.parts().stream()).toList(),
                files,
                group.stream().map(Batch::name).toList(),
                "");
    }

    private static void checkRows(Staging staging, Manifest manifest) throws IOException {
        try (var check = new RowCheck()) {
            var wrong = check.check(staging.folder(), manifest);
            if (!wrong.isEmpty()) {
                throw new IOException("their rows are not those that were kept; "
                        + wrong.get(0).what());
            }
        }
    }

    /** Copies what is no table: specifications, and the manifests that the ledger names. */
    private static void carryAlong(Batch batch, Staging staging, Map<String, DataFile> files) throws IOException {
        for (var file : batch.manifest().files()) {
            if (file.table().isEmpty() && !files.containsKey(file.name())) {
                Files.copy(batch.folder().resolve(file.name()), staging.folder().resolve(file.name()));
                files.put(file.name(), file);
            }
        }
        if (batch.manifest().replaces().isEmpty()) {
            var name = MANIFEST_OF + batch.name() + JSON;
            var copy = staging.folder().resolve(name);
            Files.copy(batch.folder().resolve(Manifest.FILE_NAME), copy);
            files.put(name, new DataFile(name, "", 0, Files.size(copy), batch.manifestSha256(), "", "", "", ""));
        }
    }
}
