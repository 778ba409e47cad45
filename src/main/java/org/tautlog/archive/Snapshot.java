package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tautlog.archive.ledger.Ledger;
import org.tautlog.archive.table.Table;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * What an archive holds at one moment: the batches that count, the chain, and what is wrong at first sight. Taken without
 * a lock, by looking until nothing moved meanwhile.
 *
 * @param batches the batches that count, by name
 * @param present every folder of a batch that has a readable manifest, counting or not
 * @param replaced batches that are there and do not count, as another takes their place, each with that other
 * @param ledger the chain
 * @param problems what is missing or cut short
 */
record Snapshot(
        List<Batch> batches,
        List<Batch> present,
        Map<String, Batch> replaced,
        Ledger.Reading ledger,
        List<Problem> problems) {
    private static final int MOST_LOOKS = 200;

    /**
     * A batch on the disk.
     *
     * @param folder its folder
     * @param manifestSha256 hash of its manifest
     * @param manifest what it holds
     */
    record Batch(Path folder, String manifestSha256, Manifest manifest) {
        String name() {
            return folder.getFileName().toString();
        }
    }

    static Snapshot of(ArchiveFolder folder) throws IOException {
        return of(folder, new BatchReader(folder));
    }

    static Snapshot of(ArchiveFolder folder, BatchReader reader) throws IOException {
        var names = Disk.list(folder.batches());
        var seen = look(names, reader);
        for (int looks = 1; looks < MOST_LOOKS && !seen.problems.isEmpty(); looks++) {
            if (sameStill(folder, names, seen.ledger, reader)) {
                return seen;
            }
            names = Disk.list(folder.batches());
            seen = look(names, reader);
        }
        return seen;
    }

    private static boolean sameStill(ArchiveFolder folder, List<Path> names, Ledger.Reading ledger, BatchReader reader)
            throws IOException {
        return reader.ledger().equals(ledger) && Disk.list(folder.batches()).equals(names);
    }

    private static Snapshot look(List<Path> names, BatchReader reader) throws IOException {
        var problems = new ArrayList<Problem>();
        var present = new ArrayList<Batch>();
        var whole = new ArrayList<Batch>();
        var ledger = reader.ledger();
        for (var path : names) {
            if (!Files.isDirectory(path)) {
                continue;
            }
            try {
                var batch = reader.read(path);
                present.add(batch);
                var wrong = wrongAtFirstSight(batch);
                if (wrong.isEmpty()) {
                    whole.add(batch);
                }
                problems.addAll(wrong);
            } catch (IOException | IllegalArgumentException e) {
                var why = e instanceof IOException ? "has no readable " + Manifest.FILE_NAME : e.getMessage();
                problems.add(problem(
                        ProblemCode.MISSING, path.getFileName().toString(), "the batch does not count: " + why));
            }
        }
        var entered = new EnteredBatches(ledger);
        var replaced = Replacements.of(present, whole, entered);
        problems.removeIf(problem -> replaced.keySet().stream()
                .anyMatch(name -> problem.where().file().startsWith(ArchiveFolder.BATCHES + "/" + name)));
        problems.addAll(missing(entered, names));
        problems.addAll(outOfPlace(entered, ledger, present));
        problems.addAll(ledger.problems());
        var live = whole.stream()
                .filter(batch -> !replaced.containsKey(batch.name()) && !Replacements.repeats(batch, whole, entered))
                .toList();
        return new Snapshot(live, List.copyOf(present), replaced, ledger, List.copyOf(problems));
    }

    private static List<Problem> wrongAtFirstSight(Batch batch) throws IOException {
        var manifest = batch.manifest();
        if (manifest.schemaVersion() > Table.SCHEMA_VERSION) {
            return List.of(new Problem(
                    ProblemCode.UNKNOWN_LAYOUT,
                    Where.file(ArchiveFolder.BATCHES + "/" + batch.name()),
                    "the batch was kept by a newer program, with schema version " + manifest.schemaVersion(),
                    "at most " + Table.SCHEMA_VERSION,
                    "read it with that program, " + manifest.program() + " or newer"));
        }
        var problems = new ArrayList<Problem>();
        for (var file : manifest.files()) {
            var path = batch.folder().resolve(file.name());
            var place = batch.name() + "/" + file.name();
            try {
                long bytes = Files.size(path);
                if (bytes != file.bytes()) {
                    problems.add(problem(
                            ProblemCode.ALTERED,
                            place,
                            "the file has " + bytes + " bytes instead of " + file.bytes()
                                    + "; its batch does not count"));
                }
            } catch (NoSuchFileException e) {
                problems.add(problem(ProblemCode.MISSING, place, "the file is missing; its batch does not count"));
            }
        }
        return problems;
    }

    private static List<Problem> missing(EnteredBatches entered, List<Path> folders) {
        var present = new HashSet<String>();
        folders.forEach(path -> present.add(path.getFileName().toString()));
        return entered.standing().stream()
                .filter(name -> !present.contains(name))
                .sorted()
                .map(name -> problem(ProblemCode.MISSING, name, "the batch is missing; the ledger names it"))
                .toList();
    }

    private static List<Problem> outOfPlace(EnteredBatches entered, Ledger.Reading ledger, List<Batch> present) {
        var wrong = present.stream()
                .flatMap(batch -> entered.problem(batch).stream())
                .toList();
        return ledger.entries().isEmpty() && !wrong.isEmpty() ? List.of(emptyLedger()) : wrong;
    }

    /** What a chain without entries is beside batches. */
    static Problem emptyLedger() {
        return new Problem(
                ProblemCode.MISSING,
                Where.file(ArchiveFolder.LEDGER),
                "the ledger has no entry, and batches are there: it was taken away or emptied,"
                        + " or the very first import was killed before its entry",
                "",
                "copy the ledger again from where it is whole");
    }

    private static Problem problem(ProblemCode code, String place, String what) {
        return new Problem(
                code,
                Where.file(ArchiveFolder.BATCHES + "/" + place),
                what,
                "",
                "copy it again from where it is whole, or import its sources again");
    }

    /** Where the chain itself is broken or gone. */
    List<Problem> brokenChain() {
        return problems.stream()
                .filter(problem ->
                        problem.where().file().equals(ArchiveFolder.LEDGER) && problem.code() != ProblemCode.LEFTOVER)
                .toList();
    }

    /** What the chain says of batches. */
    EnteredBatches entered() {
        return new EnteredBatches(ledger);
    }

    Set<String> sources() {
        var hashes = new HashSet<String>();
        batches.forEach(batch -> batch.manifest().sources().forEach(source -> hashes.add(source.sha256())));
        return hashes;
    }

    Set<Manifest.JudgedSource> judged() {
        var judged = new HashSet<Manifest.JudgedSource>();
        batches.forEach(batch -> judged.addAll(batch.manifest().judged()));
        return judged;
    }
}
