package org.tautlog.review.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;
import org.tautlog.spc.chart.Chart;
import org.tautlog.trace.TraceIdentity;

class LotPlacesTest {
    /** The definition of the median, each lot looked up by itself; equal values on purpose. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 17, 60, 301})
    void medians_of_a_lot_and_of_the_others_are_those_of_the_values_themselves(int n) {
        var random = new SplittableRandom(n);
        var values = new ArrayList<Double>();
        var tightenings = new ArrayList<TraceIdentity>();
        for (int i = 0; i < n; i++) {
            values.add((double) random.nextInt(40));
            tightenings.add(new TraceIdentity(
                    "FW-" + i, "S40", "1", "1", 1, OffsetDateTime.MIN, new String[] {"", "A", "B", "C"}[i % 4]));
        }
        Answer<Chart> none = Answer.missing(Reason.NOT_ASKED, "not drawn");
        var chart = new StreamChart(
                new Stream("S40", "1"), ChartedFeature.TURN, tightenings, values, List.of(), none, none, "");
        var places = LotPlaces.of(chart);
        assertEquals(n, places.all());
        for (var lot : places.lots()) {
            assertEquals(median(chart, lot, true), places.medianOf(lot), lot);
            if (places.of(lot) < n) {
                assertEquals(median(chart, lot, false), places.medianOfOthers(lot), lot);
            }
        }
        assertEquals(Math.min(3, n - 1), places.lots().size());
    }

    private static double median(StreamChart chart, String lot, boolean inside) {
        var picked = IntStream.range(0, chart.values().size())
                .filter(i -> chart.tightenings().get(i).boltLot().equals(lot) == inside)
                .mapToDouble(chart.values()::get)
                .toArray();
        return Sample.of(picked, 1, "a median").orThrow().median();
    }
}
