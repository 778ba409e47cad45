package org.tautlog.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.judge.Judgement;
import org.tautlog.review.stream.Stream;
import org.tautlog.trace.Curve;

/**
 * Traces of conforming tightenings to hold a suspect one against. Of each stream's bolt position it keeps a few, spread
 * over the whole shift: whenever its shelf is full it drops every second one and from then on takes every second.
 */
final class Peers {
    private static final int FULL = 16;
    private static final int ENOUGH = 4;

    private record Place(Stream stream, String bolt) {}

    private static final class Shelf {
        private List<Outline> kept = new ArrayList<>();
        private long seen;
        private long every = 1;

        void offer(Judgement judgement, Curve curve) {
            if (seen++ % every != 0) {
                return;
            }
            kept.add(Outline.of(curve, judgement.signature()));
            if (kept.size() == FULL) {
                var half = new ArrayList<Outline>();
                for (int i = 0; i < kept.size(); i += 2) {
                    half.add(kept.get(i));
                }
                kept = half;
                every *= 2;
            }
        }
    }

    private final Map<Place, Shelf> shelves = new HashMap<>();

    void offer(Judgement judgement, Curve curve) {
        var identity = judgement.identity();
        shelves.computeIfAbsent(new Place(Stream.of(identity), identity.bolt()), place -> new Shelf())
                .offer(judgement, curve);
    }

    List<Outline> of(Judgement judgement) {
        var identity = judgement.identity();
        var stream = Stream.of(identity);
        var own = shelves.get(new Place(stream, identity.bolt()));
        if (own != null && own.kept.size() >= ENOUGH) {
            return own.kept;
        }
        return shelves.entrySet().stream()
                .filter(shelf -> shelf.getKey().stream().equals(stream))
                .sorted(Map.Entry.comparingByKey(Comparator.comparing(Place::bolt)))
                .flatMap(shelf -> shelf.getValue().kept.stream())
                .limit(FULL)
                .toList();
    }
}
