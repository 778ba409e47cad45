package org.tautlog.review.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.MeasuredClampLoad.Point;

class LoadOnsetTest {
    /** 0.15 kN a degree from 1000 deg on, a fifth of that past 1300 deg. */
    private static double bent(double deg) {
        return 0.15 * (Math.min(deg, 1300) - 1000) + 0.03 * Math.max(0, deg - 1300);
    }

    @Test
    void a_load_that_bends_has_its_onset_where_it_has_fallen_behind_by_the_offset() {
        var onset = LoadOnset.of(loads(LoadOnsetTest::bent, 1040, 1400), 12);
        assertEquals(1300 + 12 / (1 - 0.2), onset.onsetDeg().orElseThrow(), 1e-9);
        assertEquals(TraceUse.USED, onset.use());
    }

    /** Source: ISO 898-1:2009, table 3, Rpf, read in a copy: stress at 0.0048 d non-proportional elongation; M10 with a pitch of 1.5 mm. */
    @Test
    void the_usual_offset_is_the_turn_of_the_stretch_at_which_full_size_fasteners_are_said_to_yield() {
        assertEquals(0.048 / 1.5 * 360, LoadOnset.usualOffsetDeg(FenwaterEngine.specification()), 1e-9);
    }

    @Test
    void one_wild_load_moves_it_little_wherever_it_stands() {
        var measured = loads(LoadOnsetTest::bent, 1040, 1400);
        for (int i = 0; i < measured.points().size(); i++) {
            var points = new ArrayList<>(measured.points());
            var at = points.get(i);
            points.set(i, new Point(at.angleDeg(), at.loadKN() * 0.9));
            var onset = LoadOnset.of(new MeasuredClampLoad("Q1", "1", 1, points), 12);
            assertEquals(1315, onset.onsetDeg().orElse(0), 12, "wild at " + at.angleDeg());
        }
    }

    @Test
    void a_load_on_its_line_to_the_end_has_none_and_one_last_load_alone_is_no_proof() {
        assertEquals(TraceUse.NO_ONSET, use(loads(deg -> 0.15 * (deg - 1000), 1040, 1400)));
        var points =
                new ArrayList<>(loads(deg -> 0.15 * (deg - 1000), 1040, 1400).points());
        points.add(new Point(1410, 57));
        assertEquals(TraceUse.NO_ONSET, use(new MeasuredClampLoad("Q1", "1", 1, points)));
    }

    @Test
    void loads_without_a_lower_part_or_without_a_line_are_refused_with_their_reason() {
        assertEquals(TraceUse.TOO_FEW_POINTS, use(new MeasuredClampLoad("Q1", "1", 1, List.of())));
        assertEquals(TraceUse.TOO_FEW_POINTS, use(loads(LoadOnsetTest::bent, 1280, 1400)));
        assertEquals(TraceUse.TOO_FEW_POINTS, use(loads(deg -> -5, 1040, 1400)));
        assertEquals(TraceUse.NO_STRAIGHT_PART, use(loads(deg -> bent(deg) + (deg % 20 == 0 ? 4 : -4), 1040, 1400)));
        assertThrows(IllegalArgumentException.class, () -> LoadOnset.of(loads(LoadOnsetTest::bent, 1040, 1400), 0));
    }

    private static TraceUse use(MeasuredClampLoad measured) {
        return LoadOnset.of(measured, 12).use();
    }

    private static MeasuredClampLoad loads(DoubleUnaryOperator loadKN, int fromDeg, int toDeg) {
        var points = new ArrayList<Point>();
        for (int deg = fromDeg; deg <= toDeg; deg += 10) {
            points.add(new Point(deg, loadKN.applyAsDouble(deg)));
        }
        return new MeasuredClampLoad("Q1", "1", 1, points);
    }
}
