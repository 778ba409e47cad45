package org.tautlog.review.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tautlog.review.MadeShift;
import org.tautlog.spc.Simulated;
import org.tautlog.trace.TraceIdentity;

/** Spring-back recorded in steps of 0.1 deg: most values are the same but for binary fractions. */
class CoarseStepsTest {
    private static final int ENGINES = 60;
    private static final OffsetDateTime START = OffsetDateTime.parse("2026-03-17T06:00:00+01:00");

    @Test
    void values_that_spread_by_less_than_a_step_are_too_coarse_to_chart() {
        var charts = springBack(shift(0));
        assertEquals(4, charts.size());
        charts.forEach(chart -> assertTrue(
                chart.chart().whyMissing().orElse("").matches("recorded in steps of 0\\.10 .*too coarse to chart"),
                chart.chart().toString()));
        OwnShifts.in(charts).charts().forEach(chart -> assertEquals(0, chart.ownSignals()));
    }

    @Test
    void a_step_below_the_resolution_is_no_change() {
        var charts = springBack(shift(0.06));
        assertEquals(List.of(), LevelChanges.in(charts));
        assertTrue(OwnShifts.in(charts).shifts().stream().noneMatch(OwnShift::holds));
    }

    @Test
    void a_step_of_several_times_the_resolution_is_found() {
        var charts = springBack(shift(0.4));
        var changes = LevelChanges.in(charts);
        assertEquals(1, changes.size(), changes.toString());
        assertEquals(0.4, changes.get(0).point().size().value(), 0.05);
        var own = OwnShifts.in(charts).shifts().stream().filter(OwnShift::holds).toList();
        assertEquals(
                List.of("4"), own.stream().map(one -> one.stream().spindle()).toList());
    }

    @Test
    void spindles_side_by_side_lie_apart_by_no_more_than_the_recording_can_tell() {
        var charts = springBack(shift(0));
        var figures = StreamFigures.of(
                charts, List.of(), List.of(), MadeShift.specification().window());
        figures.forEach(one -> assertTrue(
                one.offset() == null || Math.abs(one.offset()) <= 2.001,
                one.stream().words() + ' ' + one.offset()));
        assertFalse(figures.stream().allMatch(one -> one.offset() == null));
    }

    private static List<StreamChart> springBack(List<Levels> levels) {
        return StreamCharts.charted(levels).stream()
                .filter(chart -> chart.feature() == ChartedFeature.SPRING_BACK)
                .toList();
    }

    private static List<Levels> shift(double stepOfLast) {
        var levels = new ArrayList<Levels>();
        for (int spindle = 1; spindle <= 4; spindle++) {
            var noise = Simulated.normal(spindle, ENGINES);
            for (int i = 0; i < ENGINES; i++) {
                double moved = spindle == 4 && i >= ENGINES / 2 ? stepOfLast : 0;
                double stop = Math.rint(10 * (360 + i)) / 10;
                double least = stop - Math.rint(10 * (2.65 + 0.03 * spindle + moved + 0.03 * noise[i])) / 10;
                var time = START.plusMinutes(i).plusSeconds(spindle);
                var identity = new TraceIdentity("FW-" + i, "S50", "" + spindle, "1", 1, time, "A17");
                levels.add(new Levels(identity, false, Map.of(ChartedFeature.SPRING_BACK, stop - least)));
            }
        }
        return levels;
    }
}
