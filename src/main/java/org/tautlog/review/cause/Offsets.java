package org.tautlog.review.cause;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.review.cause.Readings.Place;
import org.tautlog.review.cause.Readings.Reading;
import org.tautlog.review.stream.Cue;
import org.tautlog.review.stream.Stream;
import org.tautlog.spc.Sample;

/**
 * Levels that are off all shift long, so that no step shows them: of a spindle against its station's others, of all spindles
 * against what the model foretells for the stated joint; {@link OffSince} holds them against an earlier shift.
 *
 * <p>What is off so is looked at only where good sides differ so far in fewer than one of {@value #ONE_IN} cases, shared
 * among all that were looked at (Bonferroni).
 */
final class Offsets {
    private static final int ONE_IN = 100;
    private static final int LEAST_SPINDLES = 3;

    private static final double TO_SIGMA = 1.4826;

    /** Student's t with 5 degrees of freedom reaches about twice as far out as the normal distribution. */
    private static final double FEW = 2;

    /** How far the model itself may be off, as a share of the cue; ours. */
    private static final double MODEL_SHARE = 0.02;

    /** Where free turning begins and how hard it goes no specification limits. */
    private static final Set<Cue> NOT_STATED = EnumSet.of(Cue.RUNDOWN, Cue.PREVAILING_TORQUE);

    /** One level that may be off, with both sides to hold against each other. */
    record Offset(
            Pattern pattern,
            Against against,
            String what,
            Ordinary ordinary,
            List<Map<Cue, Double>> without,
            List<Map<Cue, Double>> with) {}

    private Offsets() {}

    /** Each spindle against its station's others; those with a step of their own are left to that. */
    static List<Offset> ofSpindles(Readings now, Set<Stream> stepped) {
        var found = new ArrayList<Offset>();
        var stations = stations(now.levels());
        stations.forEach((station, levels) -> levels.forEach((stream, own) -> {
            var others = others(levels, stream);
            if (levels.size() >= LEAST_SPINDLES && !stepped.contains(stream)) {
                found.add(new Offset(
                        Pattern.ONE_SPINDLE,
                        Against.OTHER_SPINDLES,
                        stream.words(),
                        Ordinary.spindles(spreads(stations, stream)).recordedIn(now.steps()),
                        rows(
                                now,
                                reading -> !reading.stream().equals(stream)
                                        && reading.stream().station().equals(station)),
                        moved(rows(now, reading -> reading.stream().equals(stream)), apart(own, others))));
            }
        }));
        return found;
    }

    /** All spindles together against the stated joint. */
    static List<Offset> ofShift(Readings now, JointSpecification specification, StatedJoint stated) {
        var levels = new ArrayList<>(now.levels().values());
        if (levels.isEmpty()) {
            return List.of();
        }
        var foretold = Shown.usual(specification, stated, now.rundownDeg()).cues();
        foretold.keySet().removeAll(NOT_STATED);
        var spreads = new EnumMap<Cue, Double>(Cue.class);
        foretold.forEach((cue, value) -> spreads.put(cue, MODEL_SHARE * Math.abs(value)));
        var engines = now.engines(lot -> true);
        return List.of(new Offset(
                Pattern.ALL_SPINDLES,
                Against.STATED_JOINT,
                "the whole shift",
                Ordinary.tolerances(stated, spreads).recordedIn(now.steps()),
                only(engines, foretold.keySet()),
                moved(only(engines, foretold.keySet()), Readings.less(Readings.medians(levels), foretold))));
    }

    /** Those that are off, in the order given. */
    static List<Diagnosis> diagnosed(List<Offset> offsets, Sensitivities sensitivities) {
        var found = new ArrayList<Diagnosis>();
        for (var one : offsets) {
            Moved.of(one.without, one.with)
                    .filter(moved ->
                            Ranking.pOfChance(moved, sensitivities, one.ordinary) * offsets.size() * ONE_IN < 1)
                    .map(moved -> Ranking.of(moved, sensitivities, one.ordinary, one.pattern, one.against, one.what))
                    .ifPresent(found::add);
        }
        return found;
    }

    /** Levels of each stream, its bolt positions together, by station. */
    private static Map<String, Map<Stream, Map<Cue, Double>>> stations(Map<Place, Map<Cue, Double>> places) {
        var streams = new TreeMap<Stream, List<Map<Cue, Double>>>();
        places.forEach((place, level) -> streams.computeIfAbsent(place.stream(), unused -> new ArrayList<>())
                .add(level));
        var stations = new TreeMap<String, Map<Stream, Map<Cue, Double>>>();
        streams.forEach((stream, levels) -> stations.computeIfAbsent(stream.station(), unused -> new TreeMap<>())
                .put(stream, Readings.medians(levels)));
        return stations;
    }

    private static List<Map<Cue, Double>> others(Map<Stream, Map<Cue, Double>> levels, Stream stream) {
        return levels.entrySet().stream()
                .filter(entry -> !entry.getKey().equals(stream))
                .map(Map.Entry::getValue)
                .toList();
    }

    /** A spindle's level less that of its station's others; where free turning begins is the place's own. */
    private static Map<Cue, Double> apart(Map<Cue, Double> own, List<Map<Cue, Double>> others) {
        var apart = Readings.less(own, Readings.medians(others));
        apart.remove(Cue.RUNDOWN);
        return apart;
    }

    /** How far the other spindles of the shift lie from their stations' middles, widened as they are few. */
    private static Map<Cue, Double> spreads(Map<String, Map<Stream, Map<Cue, Double>>> stations, Stream without) {
        var apart = new ArrayList<Map<Cue, Double>>();
        stations.values()
                .forEach(levels -> levels.forEach((stream, own) -> {
                    if (levels.size() >= LEAST_SPINDLES && !stream.equals(without)) {
                        apart.add(apart(own, others(levels, stream)));
                    }
                }));
        var spreads = new EnumMap<Cue, Double>(Cue.class);
        for (var cue : Cue.values()) {
            var values = apart.stream()
                    .map(level -> level.get(cue))
                    .filter(Objects::nonNull)
                    .mapToDouble(Math::abs)
                    .toArray();
            if (values.length > 1) {
                spreads.put(cue, FEW * TO_SIGMA * Sample.derived(values).median());
            }
        }
        return spreads;
    }

    private static List<Map<Cue, Double>> rows(Readings readings, Predicate<Reading> which) {
        return readings.where(which).stream().map(Reading::cues).toList();
    }

    private static List<Map<Cue, Double>> only(List<Map<Cue, Double>> rows, Collection<Cue> cues) {
        return rows.stream()
                .map(row -> {
                    var kept = new EnumMap<Cue, Double>(row);
                    kept.keySet().retainAll(cues);
                    return (Map<Cue, Double>) kept;
                })
                .toList();
    }

    private static List<Map<Cue, Double>> moved(List<Map<Cue, Double>> rows, Map<Cue, Double> by) {
        return rows.stream()
                .map(row -> {
                    var there = new EnumMap<Cue, Double>(Cue.class);
                    row.forEach((cue, value) -> {
                        var step = by.get(cue);
                        if (step != null) {
                            there.put(cue, value + step);
                        }
                    });
                    return (Map<Cue, Double>) there;
                })
                .toList();
    }
}
