package org.tautlog.review.cause;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tautlog.review.cause.Readings.Reading;
import org.tautlog.review.stream.Cue;
import org.tautlog.review.stream.Stream;
import org.tautlog.spc.Sample;

/**
 * Spindles that are off since an earlier shift. Lots, layers and weather move all spindles of a station, so each is held
 * against the others on the same engine, then and now:
 *
 * <pre>
 * d = (own - median of the others), now  -  (own - median of the others), then      each less its usual level then
 * C = that of the two means, and what the other spindles moved by beyond theirs
 * </pre>
 *
 * <p>One that is off stands among the others of the next and tilts their median: so the surest is taken first and left out
 * there, and the rest are looked at again. It is taken only where good spindles move so far in fewer than one of
 * {@value #ONE_IN} comparisons of two shifts, shared among all spindles (Bonferroni).
 *
 * <p>Source: difference in differences, common practice in studies before and after; robust scale 1.4826 times the median of
 * absolute deviations, Montgomery.
 */
final class OffSince {
    private static final int ONE_IN = 100;
    private static final int LEAST_SPINDLES = 3;
    private static final double TO_SIGMA = 1.4826;
    /** Where single tightenings spread by less than this share of the recording's step, rounding moves their mean; ours. */
    private static final double COARSE = 0.6;

    private static final String WHICH_SIDE =
            "half of its station's spindles or more moved apart from the rest, so nobody knows which of them moved";

    private final Readings before;
    private final Readings now;
    private final Sensitivities sensitivities;
    private final Map<String, List<Stream>> stations;

    private OffSince(Readings before, Readings now, Sensitivities sensitivities) {
        this.before = before;
        this.now = now;
        this.sensitivities = sensitivities;
        stations = stations(before, now);
    }

    /** Diagnoses of the spindles that are off, surest first. */
    static List<Diagnosis> of(Readings before, Readings now, Sensitivities sensitivities) {
        return new OffSince(before, now, sensitivities).diagnoses();
    }

    private List<Diagnosis> diagnoses() {
        var off = off();
        var moved = moved(off, Set.of());
        return off.stream()
                .map(stream -> {
                    var own = moved.get(stream);
                    return own == null || halved(stream.station(), off)
                            ? Diagnosis.missing(Pattern.ONE_SPINDLE, Against.EARLIER_SHIFT, stream.words(), WHICH_SIDE)
                            : Ranking.of(
                                    own,
                                    sensitivities,
                                    ordinary(own, moved, off),
                                    Pattern.ONE_SPINDLE,
                                    Against.EARLIER_SHIFT,
                                    stream.words());
                })
                .toList();
    }

    private Set<Stream> off() {
        int looked = stations.values().stream().mapToInt(List::size).sum();
        var off = new LinkedHashSet<Stream>();
        while (true) {
            var moved = moved(off, off);
            Stream surest = null;
            double least = 1.0 / ONE_IN / looked;
            for (var one : moved.entrySet()) {
                double p = Ranking.pOfChance(one.getValue(), sensitivities, ordinary(one.getValue(), moved, off));
                if (p < least) {
                    least = p;
                    surest = one.getKey();
                }
            }
            if (surest == null) {
                return off;
            }
            off.add(surest);
        }
    }

    private boolean halved(String station, Set<Stream> off) {
        var own = stations.getOrDefault(station, List.of());
        return 2 * own.stream().filter(off::contains).count() >= own.size();
    }

    /** How far each spindle moved apart from its station's others, those left out that are off themselves. */
    private Map<Stream, Moved> moved(Set<Stream> off, Set<Stream> without) {
        var moved = new LinkedHashMap<Stream, Moved>();
        stations.values()
                .forEach(streams -> streams.stream()
                        .filter(stream -> !without.contains(stream))
                        .forEach(stream -> Moved.of(apart(before, stream, off), apart(now, stream, off))
                                .ifPresent(own -> moved.put(stream, own))));
        return moved;
    }

    private static List<Map<Cue, Double>> apart(Readings readings, Stream stream, Set<Stream> off) {
        return readings.apart(stream, off).stream().map(Reading::cues).toList();
    }

    /** What the other spindles moved by, beyond what the scatter of their tightenings gives, and rounding where it is coarse. */
    private Ordinary ordinary(Moved own, Map<Stream, Moved> moved, Set<Stream> off) {
        var spreads = new EnumMap<Cue, Double>(Cue.class);
        for (int i = 0; i < own.cues().size(); i++) {
            var cue = own.cues().get(i);
            var others = moved.entrySet().stream()
                    .filter(other -> other.getValue() != own && !off.contains(other.getKey()))
                    .map(other -> other.getValue().inErrors(cue))
                    .flatMap(Optional::stream)
                    .mapToDouble(Math::abs)
                    .toArray();
            if (others.length > 1) {
                double times = TO_SIGMA * Sample.derived(others).median();
                spreads.put(cue, own.error(i) * Math.sqrt(Math.max(0, times * times - 1)));
            }
        }
        return Ordinary.beyondScatter(spreads).recordedIn(coarse(own));
    }

    private Map<Cue, Double> coarse(Moved own) {
        var steps = new EnumMap<Cue, Double>(Cue.class);
        for (int i = 0; i < own.cues().size(); i++) {
            double step = now.steps().getOrDefault(own.cues().get(i), 0.0);
            if (own.spread(i) < COARSE * step) {
                steps.put(own.cues().get(i), step);
            }
        }
        return steps;
    }

    /** Stations with enough spindles that worked in both shifts. */
    private static Map<String, List<Stream>> stations(Readings before, Readings now) {
        var there = before.streams();
        there.retainAll(now.streams());
        var stations = there.stream()
                .collect(Collectors.groupingBy(Stream::station, TreeMap::new, Collectors.<Stream>toList()));
        stations.values().removeIf(streams -> streams.size() < LEAST_SPINDLES);
        return stations;
    }
}
