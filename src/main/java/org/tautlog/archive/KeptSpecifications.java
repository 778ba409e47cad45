package org.tautlog.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** The specifications that judged, as their files were when they judged: each text is held against its hash. */
final class KeptSpecifications {
    private static final String ENDING = ".toml";

    private KeptSpecifications() {}

    static Outcome<List<SpecificationUsed>> of(Snapshot snapshot) throws IOException {
        var problems = new ArrayList<>(snapshot.problems());
        var texts = texts(snapshot, problems);
        var used = new LinkedHashMap<String, SpecificationUsed>();
        for (var use : inOrder(snapshot, problems)) {
            for (var judged : use.manifest().judged()) {
                var text = texts.getOrDefault(judged.specificationSha256(), "");
                used.put(
                        judged.specificationSha256() + ' ' + judged.specification() + ' ' + judged.version(),
                        new SpecificationUsed(judged.specification(), judged.version(), text));
            }
        }
        return Outcome.of(List.copyOf(used.values()), problems);
    }

    /** A batch as it was imported. */
    private record Use(String batch, Manifest manifest) {}

    /**
     * The imports in the order of the chain, which no clock and no merging changes. Names of batches would not do: two of
     * one second are in no order, and a merged batch is younger than what it holds.
     */
    private static List<Use> inOrder(Snapshot snapshot, List<Problem> problems) throws IOException {
        var uses = new ArrayList<Use>();
        for (var batch : snapshot.batches()) {
            var merged = merged(batch, problems);
            uses.addAll(merged.isEmpty() ? List.of(new Use(batch.name(), batch.manifest())) : merged);
        }
        var places = new HashMap<String, Integer>();
        for (var entry : snapshot.ledger().entries()) {
            if (entry.event() instanceof BatchKept kept) {
                places.putIfAbsent(kept.batch(), entry.number());
            }
        }
        uses.sort(Comparator.comparing((Use use) -> places.getOrDefault(use.batch(), Integer.MAX_VALUE))
                .thenComparing(Use::batch));
        return uses;
    }

    /** The imports that a merged batch holds, by the manifests that it keeps; none where it is not merged. */
    private static List<Use> merged(Snapshot.Batch batch, List<Problem> problems) throws IOException {
        var uses = new ArrayList<Use>();
        for (var file : batch.manifest().files()) {
            var name = Tidy.batchOfManifest(file.name());
            if (name.isEmpty()) {
                continue;
            }
            var bytes = Files.readAllBytes(batch.folder().resolve(file.name()));
            if (!Disk.sha256(bytes).equals(file.sha256())) {
                problems.add(altered(batch.name() + '/' + file.name(), "the order of its imports is not known"));
                return List.of();
            }
            var manifest = Manifest.parse(bytes);
            if (manifest.replaces().isEmpty()) {
                uses.add(new Use(name.get(), manifest));
            }
        }
        return uses;
    }

    private static Map<String, String> texts(Snapshot snapshot, List<Problem> problems) throws IOException {
        var texts = new LinkedHashMap<String, String>();
        for (var batch : snapshot.batches()) {
            for (var file : batch.manifest().files()) {
                if (file.name().endsWith(ENDING) && !texts.containsKey(file.sha256())) {
                    read(batch.folder().resolve(file.name()), file.sha256(), texts, problems);
                }
            }
        }
        return texts;
    }

    private static void read(Path path, String sha256, Map<String, String> texts, List<Problem> problems)
            throws IOException {
        var bytes = Files.readAllBytes(path);
        if (Disk.sha256(bytes).equals(sha256)) {
            texts.put(sha256, new String(bytes, StandardCharsets.UTF_8));
        } else {
            problems.add(altered(path.getFileName().toString(), "the specification is left out"));
        }
    }

    private static Problem altered(String file, String consequence) {
        return new Problem(
                ProblemCode.ALTERED,
                Where.file(file),
                "the file's bytes were altered; " + consequence,
                "",
                "copy it again from where it is whole");
    }
}
