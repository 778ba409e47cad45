package org.tautlog.review.cause;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.review.stream.SetAside;
import org.tautlog.review.stream.Stream;
import org.tautlog.spc.Sample;
import org.tautlog.trace.TraceIdentity;

/**
 * The cues of a shift's first attempts, each less the median of its own spindle and bolt position. Tightenings with a fault
 * of their own are set aside.
 */
final class Readings {
    private record Place(Stream stream, String bolt) {}

    /** One tightening's cues, less the usual ones of its place. */
    record Reading(TraceIdentity tightening, Stream stream, Map<Cue, Double> cues) {}

    private final List<Reading> all;
    private final double rundownDeg;

    private Readings(List<Reading> all, double rundownDeg) {
        this.all = all;
        this.rundownDeg = rundownDeg;
    }

    static Readings of(List<Judgement> judgements) {
        var raw = judgements.stream()
                .filter(judgement -> judgement.identity().attempt() == 1)
                .filter(judgement -> !SetAside.bearsFault(
                        judgement.verdict(),
                        judgement.findings().stream().map(Finding::code).toList()))
                .sorted(Comparator.comparing(judgement -> when(judgement.identity())))
                .map(judgement -> new Reading(judgement.identity(), Stream.of(judgement.identity()), cues(judgement)))
                .toList();
        var places = raw.stream()
                .collect(Collectors.groupingBy(
                        reading ->
                                new Place(reading.stream(), reading.tightening().bolt()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        var levels = new HashMap<Place, Map<Cue, Double>>();
        places.forEach((place, own) -> levels.put(place, medians(own)));
        var centred = raw.stream()
                .map(reading -> new Reading(
                        reading.tightening(),
                        reading.stream(),
                        less(
                                reading.cues(),
                                Objects.requireNonNull(levels.get(new Place(
                                        reading.stream(), reading.tightening().bolt()))))))
                .toList();
        return new Readings(centred, medians(raw).getOrDefault(Cue.RUNDOWN, 0.0));
    }

    /** Usual turn from the first sample to the snug point, deg; 0 where no recording has its rundown. */
    double rundownDeg() {
        return rundownDeg;
    }

    /** What a spindle did on each engine apart from its station's others, in time order. */
    List<Reading> apart(Stream stream) {
        var others = new HashMap<String, List<Reading>>();
        all.stream()
                .filter(reading -> reading.stream().station().equals(stream.station())
                        && !reading.stream().equals(stream))
                .forEach(reading -> others.computeIfAbsent(reading.tightening().serial(), unused -> new ArrayList<>())
                        .add(reading));
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

    /** What all spindles together did on each engine with bolts of some lots, spindle by spindle alike. */
    List<Map<Cue, Double>> engines(Predicate<String> lot) {
        var engines = all.stream()
                .filter(reading -> lot.test(reading.tightening().boltLot()))
                .collect(Collectors.groupingBy(
                        reading -> reading.tightening().serial(), TreeMap::new, Collectors.toList()));
        return engines.values().stream().map(Readings::medians).toList();
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

    private static Instant when(TraceIdentity tightening) {
        var time = tightening.time();
        return time == null ? Instant.MAX : time.toInstant();
    }

    private static Map<Cue, Double> cues(Judgement judgement) {
        var cues = new EnumMap<Cue, Double>(Cue.class);
        for (var cue : Cue.values()) {
            var feature = cue.of(judgement.signature());
            if (feature.isFound()) {
                cues.put(cue, feature.number());
            }
        }
        return cues;
    }

    private static Map<Cue, Double> less(Map<Cue, Double> values, Map<Cue, Double> levels) {
        var differences = new EnumMap<Cue, Double>(Cue.class);
        values.forEach((cue, value) -> {
            var level = levels.get(cue);
            if (level != null) {
                differences.put(cue, value - level);
            }
        });
        return differences;
    }

    private static Map<Cue, Double> medians(List<Reading> readings) {
        var medians = new EnumMap<Cue, Double>(Cue.class);
        for (var cue : Cue.values()) {
            var values = readings.stream()
                    .map(reading -> reading.cues().get(cue))
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
