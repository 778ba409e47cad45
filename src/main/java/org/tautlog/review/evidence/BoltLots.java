package org.tautlog.review.evidence;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
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

    private final StandingSearch all;
    private final Duration clockMargin;
    private final Map<String, LotPlaces> places = new HashMap<>();

    /**
     * A search among judgements.
     *
     * @param standing the judgements that stand
     * @param clockMargin by how much clocks may differ, as stated; a lot is in whole whatever they say
     */
    public BoltLots(StandingSearch standing, Duration clockMargin) {
        all = standing;
        this.clockMargin = clockMargin;
    }

    /**
     * Every tightening with a bolt of one lot, at whatever station; a lot has no bracket.
     *
     * @param lot the lot
     * @return what is in; empty where the archive has no bolt of it
     * @throws IOException where the judgements cannot be read
     */
    public Optional<Containment> of(String lot) throws IOException {
        return containment(lot, "", all.ofLot(lot));
    }

    /**
     * The lots that a cause goes with: a finding that the bolts themselves can cause, in bolts of the lot on two spindles or
     * more, as no spindle's own fault follows a lot. Every engine with a bolt of such a lot is in. A finding on one spindle
     * alone holds no lot: whatever lots passed there would be held whole; {@link LotReach} says how far they reach.
     *
     * @param code the finding
     * @param bracketed the brackets that are held
     * @return a containment for each such lot, in order
     * @throws IOException where the judgements cannot be read
     */
    public List<Containment> lotsWith(FindingCode code, List<Containment> bracketed) throws IOException {
        if (!OF_THE_BOLTS.contains(code)) {
            return List.of();
        }
        var lots = bracketed.stream()
                .flatMap(bracket -> bracket.contained().stream())
                .flatMap(one -> one.judgement().stream())
                .filter(one -> one.shows(code))
                .map(one -> one.identity().boltLot())
                .filter(lot -> !lot.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        var held = new ArrayList<Containment>();
        for (var lot : lots) {
            var bolts = all.ofLot(lot);
            if (spindlesThatShow(code, bolts) >= SPINDLES_OF_A_LOT) {
                containment(lot, code.title(), bolts).ifPresent(held::add);
            }
        }
        return held;
    }

    private static long spindlesThatShow(FindingCode code, List<BriefJudgement> bolts) {
        return bolts.stream()
                .filter(one -> one.shows(code))
                .map(one -> Stream.of(one.identity()))
                .distinct()
                .count();
    }

    private Optional<Containment> containment(String lot, String cause, List<BriefJudgement> bolts) {
        var contained = bolts.stream()
                .map(one -> new Contained(one.identity().serial(), Contained.Reason.OF_THE_LOT, one))
                .toList();
        return contained.isEmpty()
                ? Optional.empty()
                : Optional.of(new Containment(
                        "lot " + lot,
                        cause,
                        null,
                        null,
                        null,
                        null,
                        contained,
                        contained.size(),
                        clockMargin,
                        null,
                        null,
                        List.of()));
    }

    /** The lots met inside a bracket, most met first. */
    List<LotReach> met(List<Contained> contained) throws IOException {
        var held = contained.stream().map(Contained::serial).collect(Collectors.toSet());
        var byLot = new TreeMap<String, LotPlaces>();
        contained.stream()
                .flatMap(one -> one.judgement().stream())
                .filter(one -> !one.identity().boltLot().isEmpty())
                .forEach(one -> byLot.computeIfAbsent(one.identity().boltLot(), lot -> new LotPlaces())
                        .add(one));
        var unknown =
                byLot.keySet().stream().filter(lot -> !places.containsKey(lot)).toList();
        if (!unknown.isEmpty()) {
            places.putAll(all.places(unknown));
        }
        return byLot.entrySet().stream()
                .map(lot -> Objects.requireNonNull(places.get(lot.getKey())).beyond(lot.getKey(), lot.getValue(), held))
                .sorted(Comparator.comparingInt(LotReach::inside).reversed())
                .toList();
    }
}
