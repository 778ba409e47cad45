package org.tautlog.archive;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tautlog.archive.Snapshot.Batch;
import org.tautlog.archive.ledger.Ledger;
import org.tautlog.archive.ledger.LedgerEntry;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;
import org.tautlog.archive.ledger.LedgerEvent.BatchesMerged;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * What the chain says of batches: which it names, by which manifest, after which entry. The first entry of a name holds, and
 * a batch takes the place of such as were entered before it, so that no two take each other's.
 */
final class EnteredBatches {
    private final Map<String, Entered> byName = new LinkedHashMap<>();
    private final String head;

    EnteredBatches(Ledger.Reading ledger) {
        head = ledger.head();
        for (var entry : ledger.entries()) {
            if (entry.event() instanceof BatchKept kept) {
                byName.putIfAbsent(kept.batch(), new Entered(entry, kept.manifestSha256(), List.of()));
            } else if (entry.event() instanceof BatchesMerged merged) {
                byName.putIfAbsent(
                        merged.batch(), new Entered(entry, merged.manifestSha256(), enteredOf(merged.replaced())));
            }
        }
    }

    private record Entered(LedgerEntry entry, String manifestSha256, List<String> replaced) {}

    /** How a batch stands to the chain. */
    enum Standing {
        /** The chain names it, by its manifest and where that says. */
        ENTERED,
        /** The chain names it by another manifest. */
        OF_ANOTHER_MANIFEST,
        /** The chain names it elsewhere than after the entry that its manifest names. */
        ELSEWHERE,
        /** It is not on the chain, which ends with the entry that its manifest names: the next writer enters it. */
        AWAITED,
        /** It is not on the chain, which does not end with the entry that its manifest names. */
        FOREIGN,
        /** It is not on the chain, and its manifest, of an older program, names no entry. */
        UNKNOWN
    }

    Standing of(Batch batch) {
        var named = batch.manifest().ledgerHead();
        var entered = byName.get(batch.name());
        if (entered == null) {
            return named.isEmpty() ? Standing.UNKNOWN : named.equals(head) ? Standing.AWAITED : Standing.FOREIGN;
        }
        if (!entered.manifestSha256.equals(batch.manifestSha256())) {
            return Standing.OF_ANOTHER_MANIFEST;
        }
        return named.isEmpty() || named.equals(entered.entry.previous()) ? Standing.ENTERED : Standing.ELSEWHERE;
    }

    /** What is wrong with a batch's place. */
    Optional<Problem> problem(Batch batch) {
        var place = ArchiveFolder.BATCHES + "/" + batch.name();
        return switch (of(batch)) {
            case ENTERED, AWAITED -> Optional.empty();
            case OF_ANOTHER_MANIFEST ->
                Optional.of(Verifier.altered(
                        place + "/" + Manifest.FILE_NAME, "the manifest is not the one that the ledger names"));
            case ELSEWHERE ->
                Optional.of(Verifier.altered(
                        place,
                        "the batch does not follow the entry that its manifest names: the chain was written anew"));
            case FOREIGN ->
                Optional.of(unexpected(
                        place,
                        "the batch is not in the ledger, which does not end with the entry that its manifest names:"
                                + " someone put it there, or entries were taken off the chain"));
            case UNKNOWN ->
                Optional.of(unexpected(
                        place,
                        "the batch is not in the ledger: its writer, an older program, was killed,"
                                + " or someone put it there"));
        };
    }

    private static Problem unexpected(String place, String what) {
        return new Problem(
                ProblemCode.UNEXPECTED,
                Where.file(place),
                what,
                "",
                "copy the ledger again from where it is whole, or move the batch away and import its sources again");
    }

    /**
     * The batches whose place one takes, those within them included: by the chain, and where its own entry is still to
     * come, by its manifest. None where it was put there.
     */
    Set<String> replacedBy(Batch batch) {
        var entered = byName.get(batch.name());
        var names = new HashSet<String>();
        if (entered != null) {
            add(entered.replaced, names);
        } else if (of(batch) == Standing.AWAITED) {
            add(enteredOf(batch.manifest().replaces()), names);
        }
        return names;
    }

    private List<String> enteredOf(List<String> names) {
        return names.stream().filter(byName::containsKey).toList();
    }

    private void add(List<String> replaced, Set<String> names) {
        for (var name : replaced) {
            var entered = byName.get(name);
            if (names.add(name) && entered != null) {
                add(entered.replaced, names);
            }
        }
    }

    /** The names of batches that ought to be there: entered, and merged into no other since. */
    Set<String> standing() {
        var names = new HashSet<>(byName.keySet());
        byName.values().forEach(entered -> entered.replaced.forEach(names::remove));
        return names;
    }
}
