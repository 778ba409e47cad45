package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * One chart's values in order of size, with the places that each bolt lot takes among them: the median of a lot, and that of
 * all the others, cost as much as the lot is long. A long log holds as many more lots as tightenings, and looking through
 * all tightenings for each lot would take the square of that.
 */
final class LotPlaces {
    private final double[] sorted;
    private final Map<String, List<Integer>> places;

    private LotPlaces(double[] sorted, Map<String, List<Integer>> places) {
        this.sorted = sorted;
        this.places = places;
    }

    static LotPlaces of(StreamChart chart) {
        var values = chart.numbers();
        var order = IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .toList();
        var places = new HashMap<String, List<Integer>>();
        for (int place = 0; place < values.length; place++) {
            var lot = chart.tightenings().get(order.get(place)).boltLot();
            if (!lot.isEmpty()) {
                places.computeIfAbsent(lot, unused -> new ArrayList<>()).add(place);
            }
        }
        return new LotPlaces(order.stream().mapToDouble(i -> values[i]).toArray(), places);
    }

    Set<String> lots() {
        return places.keySet();
    }

    int all() {
        return sorted.length;
    }

    int of(String lot) {
        return own(lot).size();
    }

    double medianOf(String lot) {
        var own = own(lot);
        return median(own.size(), i -> sorted[own.get(i)]);
    }

    double medianOfOthers(String lot) {
        var own = own(lot);
        return median(sorted.length - own.size(), i -> {
            int place = i;
            for (int taken : own) {
                if (taken > place) {
                    break;
                }
                place++;
            }
            return sorted[place];
        });
    }

    private List<Integer> own(String lot) {
        return places.getOrDefault(lot, List.of());
    }

    private static double median(int n, IntToDoubleFunction at) {
        double upper = at.applyAsDouble(n / 2);
        if (n % 2 == 1) {
            return upper;
        }
        double lower = at.applyAsDouble(n / 2 - 1);
        return lower + (upper - lower) / 2;
    }
}
