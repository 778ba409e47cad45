package org.tautlog.review.cause;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tautlog.review.cause.Readings.Reading;
import org.tautlog.review.stream.Change;
import org.tautlog.review.stream.Cue;
import org.tautlog.review.stream.LotEffect;
import org.tautlog.review.stream.SpindleCase;
import org.tautlog.review.stream.StreamReview;

/** Steps that all spindles of a station made at once: a spindle apart from the others does not show them. */
final class StationSteps {
    private static final int NEAR_ENGINES = 16;

    /** Both sides of a station's surest step, engine by engine, and how far its readings moved within one bolt lot. */
    record Step(
            String station,
            Pattern pattern,
            List<Map<Cue, Double>> without,
            List<Map<Cue, Double>> with,
            Set<String> since,
            Map<Cue, Double> size) {
        boolean touches(Reading reading) {
            return reading.stream().station().equals(station)
                    && since.contains(reading.tightening().serial());
        }
    }

    private StationSteps() {}

    /** One for each station with such a step, spindles that moved by themselves left out; none where a bolt lot that differs began with it, as the lot tells more. */
    static List<Step> of(StreamReview peers, Readings readings) {
        var steps = new ArrayList<Step>();
        var stepped = peers.cases().stream().map(SpindleCase::stream).collect(Collectors.toSet());
        var stations = new HashSet<String>();
        boolean lotsDiffer = peers.lots().stream().anyMatch(LotEffect::holds);
        for (var change : peers.changes()) {
            var station = change.stream().station();
            if (shared(change) && stations.add(station)) {
                Predicate<Reading> here =
                        reading -> reading.stream().station().equals(station) && !stepped.contains(reading.stream());
                var own = readings.where(here);
                int first = first(own, change);
                if (first > 0 && !(lotsDiffer && newLot(own, first))) {
                    var after = serials(own.subList(first, own.size()));
                    var engines = readings.together(here);
                    steps.add(new Step(
                            station,
                            change.ofStreams() == 1 ? Pattern.ONLY_SPINDLE : Pattern.ALL_SPINDLES,
                            rows(engines, after, false),
                            rows(engines, after, true),
                            after,
                            size(own, first)));
                }
            }
        }
        return steps;
    }

    private static boolean shared(Change change) {
        return change.ofStreams() == 1 || 2 * change.alike() > change.ofStreams();
    }

    private static int first(List<Reading> own, Change change) {
        for (int i = 0; i < own.size(); i++) {
            if (own.get(i).tightening().serial().equals(change.first().serial())) {
                return i;
            }
        }
        return -1;
    }

    /** Whether most bolts just before and just after the step are of different lots. */
    private static boolean newLot(List<Reading> own, int first) {
        return !mostOf(before(own, first)).equals(mostOf(after(own, first)));
    }

    private static List<Reading> before(List<Reading> own, int first) {
        return own.subList(Math.max(0, first - near(own)), first);
    }

    private static List<Reading> after(List<Reading> own, int first) {
        return own.subList(first, Math.min(own.size(), first + near(own)));
    }

    private static int near(List<Reading> own) {
        return NEAR_ENGINES * own.size() / serials(own).size();
    }

    /** How far the usual cues moved, by bolts of one lot, so that lots may be held against each other without the step. */
    private static Map<Cue, Double> size(List<Reading> own, int first) {
        var lot = mostOf(before(own, first));
        return Readings.less(usual(after(own, first), lot), usual(before(own, first), lot));
    }

    private static Map<Cue, Double> usual(List<Reading> readings, String lot) {
        return Readings.medians(readings.stream()
                .filter(reading -> lot.equals(reading.tightening().boltLot()))
                .map(Reading::cues)
                .toList());
    }

    private static String mostOf(List<Reading> readings) {
        return readings.stream()
                .collect(Collectors.groupingBy(reading -> reading.tightening().boltLot(), Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.<String, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse("");
    }

    private static Set<String> serials(List<Reading> readings) {
        var serials = new HashSet<String>();
        readings.forEach(reading -> serials.add(reading.tightening().serial()));
        return serials;
    }

    private static List<Map<Cue, Double>> rows(
            Map<String, Map<Cue, Double>> engines, Set<String> after, boolean inside) {
        return engines.entrySet().stream()
                .filter(engine -> after.contains(engine.getKey()) == inside)
                .map(Map.Entry::getValue)
                .toList();
    }
}
