package org.tautlog.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.Stream;
import org.tautlog.review.stream.StreamChart;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.trace.TraceIdentity;

/** One scale for a station's spindles. */
class ControlScaleTest {
    private final StreamChart first = chart("S40", "1", 68);
    private final StreamChart second = chart("S40", "2", 69);
    private final StreamChart third = chart("S40", "3", 67.5);

    @Test
    void spindles_of_a_station_share_a_scale_that_holds_all_their_limits() {
        var all = List.of(first, second, third, chart("S50", "1", 30));
        var scale = ControlScale.of(first, all);
        assertEquals(scale, ControlScale.of(second, all));
        assertTrue(scale.common());
        for (var chart : List.of(first, second, third)) {
            var limits = chart.chart().orThrow().points().get(0);
            assertTrue(scale.low() < limits.lower() && limits.upper() < scale.high());
        }
        assertTrue(scale.low() > 60, "the other station's are none of it");
    }

    @Test
    void a_stray_or_a_spindle_far_from_the_others_does_not_widen_it() {
        var calm = ControlScale.of(first, List.of(first, second, third));
        var far = chart("S40", "4", 190);
        var all = List.of(first, second, third, far);
        assertEquals(calm, ControlScale.of(first, all));
        assertFalse(ControlScale.of(far, all).common());
        var values = new ArrayList<>(first.values());
        values.set(20, 500.0);
        var strayed = ControlScale.of(chart("S40", "1", values), List.of(first, second, third));
        assertTrue(strayed.high() < 500);
    }

    private static StreamChart chart(String station, String spindle, double level) {
        var values = new ArrayList<Double>();
        for (int i = 0; i < 60; i++) {
            values.add(level + 0.3 * Math.sin(2.4 * i) + 0.2 * Math.cos(1.1 * i * i));
        }
        return chart(station, spindle, values);
    }

    private static StreamChart chart(String station, String spindle, List<Double> values) {
        var numbers = values.stream().mapToDouble(Double::doubleValue).toArray();
        var options = IndividualsOptions.withDefaults();
        var chart = IndividualsChart.phaseOne(numbers, options)
                .flatMap(phase -> IndividualsChart.chart(phase.limits(), numbers, options.rules()));
        return new StreamChart(
                new Stream(station, spindle),
                ChartedFeature.FINAL_TORQUE,
                Collections.nCopies(values.size(), new TraceIdentity("FW-000001", station, spindle, "1", 1, null, "")),
                values,
                List.of(),
                chart.map(pair -> pair.location()),
                chart.map(pair -> pair.location()),
                "");
    }
}
