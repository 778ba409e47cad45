package org.tautlog.review.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.review.stream.Cue;
import org.tautlog.review.stream.LotEffect;
import org.tautlog.review.stream.PastShift;
import org.tautlog.review.stream.SpindleCase;
import org.tautlog.review.stream.Stream;
import org.tautlog.review.stream.StreamReview;
import org.tautlog.review.stream.Unusual;

/**
 * Looks for the cause of all in a shift that differs for certain: spindles and stations that moved or are off all shift long,
 * bolt lots, tightenings that stand out.
 */
public final class Diagnoses {
    private static final String NO_JOINT =
            "the specification states no bolt and layers, so nobody knows what each cause would move";
    private static final String TOO_FEW = "too few tightenings on either side have the features that tell causes apart";

    /** Fewer faulty tightenings say nothing of their spindle. */
    private static final int LEAST_FAULTY = 3;

    private static final String FAULTY =
            " first attempts bear a fault of their own, and causes are sought among those that bear none";

    private final Optional<Sensitivities> sensitivities;
    private final Readings readings;

    private Diagnoses(Optional<Sensitivities> sensitivities, Readings readings) {
        this.sensitivities = sensitivities;
        this.readings = readings;
    }

    /**
     * Diagnoses a shift.
     *
     * @param specification the specification that judged
     * @param peers what its streams say side by side
     * @return spindles most of whose tightenings are faulty first, then those that moved, then stations, spindles and the whole
     *     shift off all shift long, then lots and single tightenings, each in the order of the review
     */
    public static List<Diagnosis> of(JointSpecification specification, StreamReview peers) {
        var readings = Readings.of(peers.cues());
        var diagnoses = new Diagnoses(Sensitivities.of(specification, readings.rundownDeg()), readings);
        var lots = peers.lots().stream()
                .filter(LotEffect::holds)
                .map(LotEffect::lot)
                .distinct()
                .toList();
        var found = new ArrayList<Diagnosis>();
        found.addAll(diagnoses.faulty(peers));
        peers.cases().forEach(one -> found.add(diagnoses.spindle(one)));
        var steps = StationSteps.of(peers, readings);
        steps.forEach(step -> found.add(diagnoses.ranked(
                step.pattern(),
                Against.BEFORE,
                Ordinary.goodParts(),
                "station " + step.station(),
                step.without(),
                step.with())));
        found.addAll(diagnoses.offsets(specification, peers));
        found.addAll(diagnoses.lots(lots, readings.without(steps)));
        peers.unusual().forEach(one -> found.add(diagnoses.tightening(one)));
        return List.copyOf(found);
    }

    /**
     * Diagnoses what is off since an earlier shift.
     *
     * @param before the earlier shift
     * @param now the later one
     * @param specification the specification that judged
     * @return spindles that are off apart from their station's others, surest first; empty where the specification states no
     *     bolt and layers
     */
    public static List<Diagnosis> since(PastShift before, PastShift now, JointSpecification specification) {
        var past = Readings.of(before.cues());
        var readings = Readings.since(past, now.cues());
        return Sensitivities.of(specification, readings.rundownDeg())
                .map(known -> OffSince.of(past, readings, known))
                .orElse(List.of());
    }

    private List<Diagnosis> offsets(JointSpecification specification, StreamReview peers) {
        if (sensitivities.isEmpty()) {
            return List.of();
        }
        var stepped = peers.cases().stream().map(SpindleCase::stream).collect(Collectors.toSet());
        var offsets = new ArrayList<>(Offsets.ofSpindles(readings, stepped));
        specification
                .statedJoint()
                .ifPresent(stated -> offsets.addAll(Offsets.ofShift(readings, specification, stated)));
        return Offsets.diagnosed(offsets, sensitivities.get());
    }

    /** Spindles most of whose tightenings bear a fault of their own: the few that are left tell no causes apart. */
    private List<Diagnosis> faulty(StreamReview peers) {
        var attempts = new TreeMap<Stream, Integer>();
        peers.charts()
                .forEach(chart -> attempts.merge(
                        chart.stream(), chart.values().size() + chart.aside().size(), Math::max));
        var found = new ArrayList<Diagnosis>();
        attempts.forEach((stream, all) -> {
            int good =
                    readings.where(reading -> reading.stream().equals(stream)).size();
            if (all - good >= LEAST_FAULTY && 2 * good < all) {
                found.add(Diagnosis.missing(
                        Pattern.ONE_SPINDLE,
                        Against.SPECIFICATION,
                        stream.words(),
                        (all - good) + " of its " + all + FAULTY));
            }
        });
        return found;
    }

    private Diagnosis spindle(SpindleCase one) {
        var first = one.shifts().get(0).first();
        var without = new ArrayList<Map<Cue, Double>>();
        var with = new ArrayList<Map<Cue, Double>>();
        for (var reading : readings.apart(one.stream())) {
            boolean since = !with.isEmpty() || reading.tightening().equals(first);
            (since ? with : without).add(reading.cues());
        }
        return ranked(
                Pattern.ONE_SPINDLE,
                Against.BEFORE,
                Ordinary.none(),
                one.stream().words(),
                without,
                with);
    }

    /** Surest first; a lot that is told apart is no peer of the next, and no lot answers for a step of a station. */
    private List<Diagnosis> lots(List<String> lots, Readings steady) {
        var found = new ArrayList<Diagnosis>();
        for (int i = 0; i < lots.size(); i++) {
            var told = lots.subList(0, i + 1);
            var without = steady.engines(other -> !told.contains(other));
            if (!without.isEmpty()) {
                found.add(ranked(
                        Pattern.ONE_LOT,
                        Against.OTHER_LOTS,
                        Ordinary.goodLots(),
                        "lot " + lots.get(i),
                        without,
                        steady.engines(lots.get(i)::equals)));
            }
        }
        return found;
    }

    private Diagnosis tightening(Unusual one) {
        var identity = one.tightening();
        return ranked(
                Pattern.ONE_TIGHTENING,
                Against.OTHER_TIGHTENINGS,
                Ordinary.stray(),
                identity.serial() + " bolt " + identity.bolt(),
                readings.peersOf(identity),
                readings.own(identity));
    }

    private Diagnosis ranked(
            Pattern pattern,
            Against against,
            Ordinary ordinary,
            String what,
            List<Map<Cue, Double>> without,
            List<Map<Cue, Double>> with) {
        return sensitivities
                .map(known -> Moved.of(without, with)
                        .map(moved -> Ranking.of(moved, known, ordinary, pattern, against, what))
                        .orElseGet(() -> Diagnosis.missing(pattern, against, what, TOO_FEW)))
                .orElseGet(() -> Diagnosis.missing(pattern, against, what, NO_JOINT));
    }
}
