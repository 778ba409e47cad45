package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;

/**
 * One spindle that moved apart from its station's others, with all features in which it did; {@code review.cause} says why.
 *
 * @param stream the station and spindle
 * @param shifts the steps that hold, surest first, at least 1
 */
public record SpindleCase(Stream stream, List<OwnShift> shifts) {
    public SpindleCase {
        Objects.requireNonNull(stream, "stream");
        shifts = List.copyOf(shifts);
        if (shifts.isEmpty()) {
            throw new IllegalArgumentException("a case needs at least 1 step that holds");
        }
    }

    /** Cases of all steps that hold, the spindle with most and surest steps first. */
    static List<SpindleCase> of(List<OwnShift> shifts) {
        var streams = new TreeMap<Stream, List<OwnShift>>();
        shifts.stream()
                .filter(OwnShift::holds)
                .sorted(Comparator.comparingDouble(OwnShift::adjusted).thenComparing(OwnShift::feature))
                .forEach(shift -> streams.computeIfAbsent(shift.stream(), unused -> new ArrayList<>())
                        .add(shift));
        return streams.entrySet().stream()
                .map(entry -> new SpindleCase(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparingInt(
                                (SpindleCase one) -> -one.shifts().size())
                        .thenComparingDouble(one -> one.shifts().get(0).adjusted()))
                .toList();
    }
}
