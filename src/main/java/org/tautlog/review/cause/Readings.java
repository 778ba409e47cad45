package org.tautlog.review.cause;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tautlog.review.stream.Cue;
import org.tautlog.review.stream.CueReading;
import org.tautlog.review.stream.Resolution;
import org.tautlog.review.stream.Stream;
import org.tautlog.spc.Sample;
import org.tautlog.trace.TraceIdentity;

/** The cues of a shift's tightenings, each less the median of its own spindle and bolt position, and those medians. */
final class Readings {
    /** A spindle at one bolt position. */
    record Place(Stream stream, String bolt) {
        static Place of(TraceIdentity identity) {
            return new Place(Stream.of(identity), identity.bolt());
        }
    }

    /** One tightening's cues, less the usual ones of its place. */
    record Reading(TraceIdentity tightening, Stream stream, Map<Cue, Double> cues) {}

    private final List<Reading> all;
    private final Map<Place, Map<Cue, Double>> levels;
    private final double rundownDeg;
    private final Map<Cue, Double> steps;

    private Readings(
            List<Reading> all, Map<Place, Map<Cue, Double>> levels, double rundownDeg, Map<Cue, Double> steps) {
        this.all = all;
        this.levels = levels;
        this.rundownDeg = rundownDeg;
        this.steps = steps;
    }

    /** Readings in order of time. */
    static Readings of(List<CueReading> raw) {
        return of(raw, levels(raw));
    }

    /** The same less the usual cues that each place had in an earlier shift. */
    static Readings since(Readings before, List<CueReading> raw) {
        return of(
                raw.stream()
                        .filter(reading -> before.levels.containsKey(Place.of(reading.tightening())))
                        .toList(),
                before.levels);
    }

    private static Map<Place, Map<Cue, Double>> levels(List<CueReading> raw) {
        var levels = new LinkedHashMap<Place, Map<Cue, Double>>();
        raw.stream()
                .collect(Collectors.groupingBy(
                        reading -> Place.of(reading.tightening()),
                        LinkedHashMap::new,
                        Collectors.mapping(CueReading::cues, Collectors.toList())))
                .forEach((place, own) -> levels.put(place, medians(own)));
        return levels;
    }

    private static Readings of(List<CueReading> raw, Map<Place, Map<Cue, Double>> levels) {
        var centred = raw.stream()
                .map(reading -> new Reading(
                        reading.tightening(),
                        Stream.of(reading.tightening()),
                        less(reading.cues(), Objects.requireNonNull(levels.get(Place.of(reading.tightening()))))))
                .toList();
        var usual = medians(raw.stream().map(CueReading::cues).toList());
        return new Readings(centred, levels, usual.getOrDefault(Cue.RUNDOWN, 0.0), steps(raw));
    }

    /** Usual turn from the first sample to the snug point, deg; 0 where no recording has its rundown. */
    double rundownDeg() {
        return rundownDeg;
    }

    /** The steps in which the cues were recorded, those that can be told. */
    Map<Cue, Double> steps() {
        return steps;
    }

    private static Map<Cue, Double> steps(List<CueReading> raw) {
        var steps = new EnumMap<Cue, Double>(Cue.class);
        for (var cue : Cue.values()) {
            double step = Resolution.stepOf(raw.stream()
                    .map(reading -> reading.cues().get(cue))
                    .filter(Objects::nonNull)
                    .mapToDouble(Double::doubleValue)
                    .toArray());
            if (step > 0) {
                steps.put(cue, step);
            }
        }
        return steps;
    }

    /** The usual cues of each place. */
    Map<Place, Map<Cue, Double>> levels() {
        return levels;
    }

    /** What a spindle did on each engine apart from its station's others, in time order. */
    List<Reading> apart(Stream stream) {
        return apart(stream, Set.of());
    }

    /** The same with some of the others left out. */
    List<Reading> apart(Stream stream, Set<Stream> without) {
        var others = new HashMap<String, List<Map<Cue, Double>>>();
        all.stream()
                .filter(reading -> reading.stream().station().equals(stream.station())
                        && !reading.stream().equals(stream)
                        && !without.contains(reading.stream()))
                .forEach(reading -> others.computeIfAbsent(reading.tightening().serial(), unused -> new ArrayList<>())
                        .add(reading.cues()));
        return all.stream()
                .filter(reading -> reading.stream().equals(stream)
                        && others.containsKey(reading.tightening().serial()))
                .map(reading -> new Reading(
                        reading.tightening(),
                        stream,
                        less(
                                reading.cues(),
                                medians(Objects.requireNonNull(
                                        others.get(reading.tightening().serial()))))))
                .toList();
    }

    /** The same as if stations had made no step. */
    Readings without(List<StationSteps.Step> steps) {
        return new Readings(
                all.stream().map(reading -> without(reading, steps)).toList(), levels, rundownDeg, this.steps);
    }

    private static Reading without(Reading reading, List<StationSteps.Step> steps) {
        var cues = new EnumMap<Cue, Double>(reading.cues());
        steps.stream()
                .filter(step -> step.touches(reading))
                .forEach(step ->
                        step.size().forEach((cue, size) -> cues.computeIfPresent(cue, (same, value) -> value - size)));
        return new Reading(reading.tightening(), reading.stream(), cues);
    }

    /** What all spindles together did on each engine with bolts of some lots, spindle by spindle alike. */
    List<Map<Cue, Double>> engines(Predicate<String> lot) {
        return together(reading -> lot.test(reading.tightening().boltLot())).values().stream()
                .toList();
    }

    /** What the spindles of a station, or all of them where it is empty, together did on each engine. */
    Map<String, Map<Cue, Double>> together(Predicate<Reading> which) {
        var engines = new LinkedHashMap<String, Map<Cue, Double>>();
        all.stream()
                .filter(which)
                .collect(Collectors.groupingBy(
                        reading -> reading.tightening().serial(),
                        TreeMap::new,
                        Collectors.mapping(Reading::cues, Collectors.toList())))
                .forEach((serial, cues) -> engines.put(serial, medians(cues)));
        return engines;
    }

    /** The spindles, in order. */
    Set<Stream> streams() {
        return all.stream().map(Reading::stream).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Those of one place, or of any other set, in order of time. */
    List<Reading> where(Predicate<Reading> which) {
        return all.stream().filter(which).toList();
    }

    /** All tightenings of a station, but for one. */
    List<Map<Cue, Double>> peersOf(TraceIdentity one) {
        return all.stream()
                .filter(reading -> reading.stream().station().equals(one.station())
                        && !reading.tightening().equals(one))
                .map(Reading::cues)
                .toList();
    }

    List<Map<Cue, Double>> own(TraceIdentity one) {
        return all.stream()
                .filter(reading -> reading.tightening().equals(one))
                .map(Reading::cues)
                .toList();
    }

    static Map<Cue, Double> less(Map<Cue, Double> values, Map<Cue, Double> levels) {
        var differences = new EnumMap<Cue, Double>(Cue.class);
        values.forEach((cue, value) -> {
            var level = levels.get(cue);
            if (level != null) {
                differences.put(cue, value - level);
            }
        });
        return differences;
    }

    static Map<Cue, Double> medians(Collection<Map<Cue, Double>> rows) {
        var medians = new EnumMap<Cue, Double>(Cue.class);
        for (var cue : Cue.values()) {
            var values = rows.stream()
                    .map(row -> row.get(cue))
                    .filter(Objects::nonNull)
                    .mapToDouble(Double::doubleValue)
                    .toArray();
            if (values.length > 0) {
                medians.put(cue, Sample.derived(values).median());
            }
        }
        return medians;
    }
}
