package org.tautlog.review.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.review.cause.Readings.Place;
import org.tautlog.review.stream.Cue;
import org.tautlog.review.stream.LotEffect;
import org.tautlog.review.stream.PastShift;
import org.tautlog.review.stream.SpindleCase;
import org.tautlog.review.stream.StreamChart;
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

    private static final String ALL_FAULTY =
            "every tightening of it bears a fault of its own, and causes are sought among those that bear none";

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
     * @return spindles that moved first, then stations, spindles and the whole shift off all shift long, then lots and single
     *     tightenings, each in the order of the review
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
        peers.cases().forEach(one -> found.add(diagnoses.spindle(one)));
        StationSteps.of(peers, readings)
                .forEach(step -> found.add(diagnoses.ranked(
                        step.pattern(),
                        Against.BEFORE,
                        Ordinary.goodParts(),
                        "station " + step.station(),
                        step.without(),
                        step.with())));
        found.addAll(diagnoses.offsets(specification, peers));
        found.addAll(diagnoses.unread(peers));
        found.addAll(diagnoses.lots(lots));
        peers.unusual().forEach(one -> found.add(diagnoses.tightening(one)));
        return List.copyOf(found);
    }

    /**
     * Diagnoses what is off since an earlier shift.
     *
     * @param before the earlier shift
     * @param now the later one
     * @param specification the specification that judged
     * @return spindles that are off apart from their station's others, no cause named; empty where the specification states no bolt and layers
     */
    public static List<Diagnosis> since(PastShift before, PastShift now, JointSpecification specification) {
        var past = Readings.of(before.cues());
        var readings = Readings.of(now.cues());
        return Sensitivities.of(specification, readings.rundownDeg())
                .map(known -> Offsets.diagnosed(Offsets.since(past, readings), known))
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

    /** Spindles of which every tightening bears a fault of its own: nothing of theirs tells causes apart. */
    private List<Diagnosis> unread(StreamReview peers) {
        var read = readings.levels().keySet().stream().map(Place::stream).collect(Collectors.toSet());
        return peers.charts().stream()
                .filter(chart -> !chart.values().isEmpty())
                .map(StreamChart::stream)
                .distinct()
                .filter(stream -> !read.contains(stream))
                .map(stream ->
                        Diagnosis.missing(Pattern.ONE_SPINDLE, Against.OTHER_SPINDLES, stream.words(), ALL_FAULTY))
                .toList();
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

    /** Surest first; a lot that is told apart is no peer of the next. */
    private List<Diagnosis> lots(List<String> lots) {
        var found = new ArrayList<Diagnosis>();
        for (int i = 0; i < lots.size(); i++) {
            var told = lots.subList(0, i + 1);
            var without = readings.engines(other -> !told.contains(other));
            if (!without.isEmpty()) {
                found.add(ranked(
                        Pattern.ONE_LOT,
                        Against.OTHER_LOTS,
                        Ordinary.goodLots(),
                        "lot " + lots.get(i),
                        without,
                        readings.engines(lots.get(i)::equals)));
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
