package org.tautlog.review.evidence;

import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Judgement;
import org.tautlog.review.stream.Stream;

/** Follows bolt lots among all judgements that stand, wherever their bolts went. */
public final class BoltLots {
    /** What a bolt itself can cause, so that it may go wherever bolts of its lot go; common practice, no source. */
    private static final Set<FindingCode> OF_THE_BOLTS = Set.of(
            FindingCode.WEAK_BOLT,
            FindingCode.WRONG_PARTS,
            FindingCode.EARLY_ONSET,
            FindingCode.LATE_ONSET,
            FindingCode.HIGH_FRICTION,
            FindingCode.LOW_FRICTION);

    private static final int SPINDLES_OF_A_LOT = 2;

    private final List<Judgement> all;
    private final Duration clockMargin;

    /**
     * A search among judgements.
     *
     * @param standing the judgements that stand, one a recording, in order of time
     * @param clockMargin by how much clocks may differ, as stated; a lot is in whole whatever they say
     */
    public BoltLots(List<Judgement> standing, Duration clockMargin) {
        all = List.copyOf(standing);
        this.clockMargin = clockMargin;
    }

    /**
     * Every tightening with a bolt of one lot, at whatever station; a lot has no bracket.
     *
     * @param lot the lot
     * @return what is in; empty where the archive has no bolt of it
     */
    public Optional<Containment> of(String lot) {
        return of(lot, "");
    }

    /**
     * The lots that a cause goes with: a finding that the bolts themselves can cause, in bolts of the lot on two spindles or
     * more, as no spindle's own fault follows a lot. Every engine with a bolt of such a lot is in. A finding on one spindle
     * alone holds no lot: whatever lots passed there would be held whole; {@link LotReach} says how far they reach.
     *
     * @param code the finding
     * @param bracketed the brackets that are held
     * @return a containment for each such lot, in order
     */
    public List<Containment> lotsWith(FindingCode code, List<Containment> bracketed) {
        if (!OF_THE_BOLTS.contains(code)) {
            return List.of();
        }
        return bracketed.stream()
                .flatMap(bracket -> bracket.contained().stream())
                .flatMap(one -> one.judgement().stream())
                .filter(one -> Bracketing.shows(one, code))
                .map(one -> one.identity().boltLot())
                .distinct()
                .filter(lot -> !lot.isEmpty() && spindlesThatShow(code, lot) >= SPINDLES_OF_A_LOT)
                .sorted()
                .flatMap(lot -> of(lot, code.title()).stream())
                .toList();
    }

    private long spindlesThatShow(FindingCode code, String lot) {
        return all.stream()
                .filter(one -> one.identity().boltLot().equals(lot) && Bracketing.shows(one, code))
                .map(one -> Stream.of(one.identity()))
                .distinct()
                .count();
    }

    private Optional<Containment> of(String lot, String cause) {
        var contained = all.stream()
                .filter(one -> one.identity().boltLot().equals(lot))
                .map(one -> new Contained(one.identity().serial(), Contained.Reason.OF_THE_LOT, one))
                .toList();
        return contained.isEmpty()
                ? Optional.empty()
                : Optional.of(new Containment(
                        "lot " + lot, cause, null, null, null, contained, contained.size(), clockMargin, List.of()));
    }

    /** The lots met inside a bracket, most met first. */
    List<LotReach> met(List<Contained> contained) {
        var inside = new LinkedHashSet<Judgement>();
        contained.forEach(one -> one.judgement().ifPresent(inside::add));
        var held = contained.stream().map(Contained::serial).collect(Collectors.toSet());
        var byLot = inside.stream()
                .map(one -> one.identity().boltLot())
                .filter(lot -> !lot.isEmpty())
                .collect(Collectors.groupingBy(lot -> lot, TreeMap::new, Collectors.counting()));
        return byLot.entrySet().stream()
                .map(lot -> reach(lot.getKey(), lot.getValue().intValue(), inside, held))
                .sorted(Comparator.comparingInt(LotReach::inside).reversed())
                .toList();
    }

    private LotReach reach(String lot, int met, Set<Judgement> inside, Set<String> held) {
        var outside = all.stream()
                .filter(one -> one.identity().boltLot().equals(lot) && !inside.contains(one))
                .toList();
        return new LotReach(
                lot,
                met,
                outside.size(),
                (int) outside.stream()
                        .map(one -> one.identity().serial())
                        .filter(serial -> !held.contains(serial))
                        .distinct()
                        .count(),
                outside.stream()
                        .map(one -> one.identity().station())
                        .distinct()
                        .sorted()
                        .toList());
    }
}
