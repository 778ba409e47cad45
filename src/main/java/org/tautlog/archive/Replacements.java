package org.tautlog.archive;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.tautlog.archive.EnteredBatches.Standing;
import org.tautlog.archive.Manifest.Part;
import org.tautlog.archive.Snapshot.Batch;
import org.tautlog.archive.table.Table;

/** Which batches another takes the place of: by the chain, and by what its manifest says that it holds. */
final class Replacements {
    private Replacements() {}

    /**
     * Batches that are there and whose place another takes, each with that other.
     *
     * @param present every batch that is there
     * @param whole those of them whose files are there
     */
    static Map<String, Batch> of(Collection<Batch> present, Collection<Batch> whole, EnteredBatches chain) {
        var others = new LinkedHashMap<String, Batch>();
        for (var merged : whole) {
            var replaced = chain.replacedBy(merged);
            for (var batch : present) {
                if (replaced.contains(batch.name()) && !batch.equals(merged) && holds(merged, batch)) {
                    others.put(batch.name(), merged);
                }
            }
        }
        others.replaceAll((name, merged) -> last(merged, others));
        return others;
    }

    private static Batch last(Batch merged, Map<String, Batch> others) {
        var next = others.get(merged.name());
        return next == null ? merged : last(next, others);
    }

    /** Whether a batch that was put there would bring rows twice: it says that it replaces others, and they are there. */
    static boolean repeats(Batch batch, Collection<Batch> whole, EnteredBatches chain) {
        var standing = chain.of(batch);
        var names = batch.manifest().replaces();
        return (standing == Standing.FOREIGN || standing == Standing.UNKNOWN)
                && whole.stream().anyMatch(other -> names.contains(other.name()));
    }

    /** Whether a manifest names everything that another does: rows, sources, judgements, and the proof of each import. */
    private static boolean holds(Batch merged, Batch batch) {
        var all = merged.manifest();
        var some = batch.manifest();
        return all.parts().containsAll(some.parts())
                && all.sources().containsAll(some.sources())
                && all.judged().containsAll(some.judged())
                && proofs(merged).containsAll(proofs(batch))
                && Table.all().stream().allMatch(table -> all.rows(table.name()) == rowsOfParts(all, table.name()));
    }

    /** The hashes of the manifests that the chain names when batches were imported. */
    private static Set<String> proofs(Batch batch) {
        if (batch.manifest().replaces().isEmpty()) {
            return Set.of(batch.manifestSha256());
        }
        var proofs = new HashSet<String>();
        for (var file : batch.manifest().files()) {
            if (Tidy.batchOfManifest(file.name()).isPresent()) {
                proofs.add(file.sha256());
            }
        }
        return proofs;
    }

    private static int rowsOfParts(Manifest manifest, String table) {
        return manifest.parts().stream()
                .filter(part -> part.table().equals(table))
                .mapToInt(Part::rows)
                .sum();
    }
}
