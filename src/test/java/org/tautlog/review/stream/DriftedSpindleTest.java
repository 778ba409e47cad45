package org.tautlog.review.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.review.cause.Cause;
import org.tautlog.review.cause.Diagnoses;

/** The one spindle of a simulated shift whose transducer leaves its scale, among all faulty bolts of that shift; 8 seeds. */
class DriftedSpindleTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 20260317})
    void is_found_by_two_torques_and_no_other_spindle_is_accused(long seed) {
        var shift = SimulatedShifts.whole(seed);
        var review = shift.review();
        assertEquals(
                List.of(shift.drifted()),
                review.cases().stream().map(SpindleCase::stream).toList());
        var found = review.cases().get(0);
        var features = found.shifts().stream().map(OwnShift::feature).collect(Collectors.toSet());
        assertTrue(
                features.containsAll(Set.of(ChartedFeature.FINAL_TORQUE, ChartedFeature.TORQUE_RATE)),
                features.toString());
        var cause = Diagnoses.of(FenwaterEngine.specification(), review)
                .get(0)
                .named()
                .orElseThrow();
        assertEquals(Cause.TORQUE_SCALE, cause.cause());
        assertEquals(0.06, cause.size(), 0.03, "the transducer shows 6 % too much");
        for (var step : found.shifts()) {
            if (!Set.of(ChartedFeature.FINAL_TORQUE, ChartedFeature.TORQUE_RATE).contains(step.feature())) {
                continue;
            }
            assertTrue(step.onChart(), "the chart of streams sees " + step.feature() + " too");
            int since = FenwaterEngine.number(step.first().serial());
            assertTrue(Math.abs(since - shift.firstDrifted()) <= 2, step.feature() + " since engine " + since);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void is_not_seen_where_nothing_drifts_and_signals_stay_near_what_chance_gives(long seed) {
        var review = SimulatedShifts.faultless(seed).review();
        assertEquals(List.of(), review.cases());
        var alarms = review.falseAlarms();
        assertTrue(alarms.searched() >= 32, "searched " + alarms.searched());
        assertTrue(
                alarms.seenOfOne() <= most(alarms.expectedOfOne()),
                alarms.seenOfOne() + " signals of one stream; chance gives " + alarms.expectedOfOne());
    }

    /** What a Poisson count of that mean exceeds once in about 700 times. */
    private static double most(double mean) {
        return mean + 3 * Math.sqrt(mean) + 1;
    }
}
