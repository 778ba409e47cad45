package org.tautlog.review.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.Judgement;
import org.tautlog.review.stream.LotEffect;
import org.tautlog.review.stream.SpindleCase;
import org.tautlog.review.stream.StreamReview;
import org.tautlog.review.stream.Unusual;

/** Looks for the cause of all in a shift that holds as different: spindles that moved, bolt lots, tightenings that stand out. */
public final class Diagnoses {
    private static final String NO_JOINT =
            "the specification states no bolt and layers, so nobody knows what each cause would move";
    private static final String TOO_FEW = "too few tightenings on either side have the features that tell causes apart";

    private final Optional<Sensitivities> sensitivities;
    private final Readings readings;

    private Diagnoses(Optional<Sensitivities> sensitivities, Readings readings) {
        this.sensitivities = sensitivities;
        this.readings = readings;
    }

    /**
     * Diagnoses a shift.
     *
     * @param judgements all judgements of the shift
     * @param specification the specification that judged
     * @param peers what its streams say side by side
     * @return spindles first, then lots, then single tightenings, each in the order of the review
     */
    public static List<Diagnosis> of(List<Judgement> judgements, JointSpecification specification, StreamReview peers) {
        var lots = peers.lots().stream()
                .filter(LotEffect::holds)
                .map(LotEffect::lot)
                .distinct()
                .toList();
        if (peers.cases().isEmpty() && lots.isEmpty() && peers.unusual().isEmpty()) {
            return List.of();
        }
        var readings = Readings.of(judgements);
        var diagnoses = new Diagnoses(Sensitivities.of(specification, readings.rundownDeg()), readings);
        var found = new ArrayList<Diagnosis>();
        peers.cases().forEach(one -> found.add(diagnoses.spindle(one)));
        found.addAll(diagnoses.lots(lots));
        peers.unusual().forEach(one -> found.add(diagnoses.tightening(one)));
        return List.copyOf(found);
    }

    private Diagnosis spindle(SpindleCase one) {
        var first = one.shifts().get(0).first();
        var without = new ArrayList<Map<Cue, Double>>();
        var with = new ArrayList<Map<Cue, Double>>();
        for (var reading : readings.apart(one.stream())) {
            boolean since = !with.isEmpty() || reading.tightening().equals(first);
            (since ? with : without).add(reading.cues());
        }
        return ranked(Pattern.ONE_SPINDLE, one.stream().words(), without, with);
    }

    /** Surest first; a lot that is told apart is no peer of the next. */
    private List<Diagnosis> lots(List<String> lots) {
        var found = new ArrayList<Diagnosis>();
        for (int i = 0; i < lots.size(); i++) {
            var told = lots.subList(0, i + 1);
            var without = readings.engines(other -> !told.contains(other));
            if (!without.isEmpty()) {
                found.add(
                        ranked(Pattern.ONE_LOT, "lot " + lots.get(i), without, readings.engines(lots.get(i)::equals)));
            }
        }
        return found;
    }

    private Diagnosis tightening(Unusual one) {
        var identity = one.tightening();
        return ranked(
                Pattern.ONE_TIGHTENING,
                identity.serial() + " bolt " + identity.bolt(),
                readings.peersOf(identity),
                readings.own(identity));
    }

    private Diagnosis ranked(
            Pattern pattern, String what, List<Map<Cue, Double>> without, List<Map<Cue, Double>> with) {
        return sensitivities
                .map(known -> Moved.of(without, with)
                        .map(moved -> Ranking.of(moved, known, pattern, what))
                        .orElseGet(() -> Diagnosis.missing(pattern, what, TOO_FEW)))
                .orElseGet(() -> Diagnosis.missing(pattern, what, NO_JOINT));
    }
}
