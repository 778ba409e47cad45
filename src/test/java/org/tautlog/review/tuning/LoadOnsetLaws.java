package org.tautlog.review.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.MeasuredClampLoad.Point;

class LoadOnsetLaws {
    @Property
    void it_lies_where_the_lag_reaches_the_offset_wherever_angle_and_load_begin_to_count(
            @ForAll @DoubleRange(min = 250, max = 350) double yieldDeg,
            @ForAll @DoubleRange(min = -0.2, max = 0.25) double ratioPast,
            @ForAll @DoubleRange(min = 10, max = 30) double offsetDeg,
            @ForAll @DoubleRange(min = -2000, max = 2000) double shiftDeg,
            @ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
        double expected = yieldDeg + offsetDeg / (1 - ratioPast);
        var onset = LoadOnset.of(loads(yieldDeg, ratioPast, shiftDeg, scale), offsetDeg);
        assertEquals(expected + shiftDeg, onset.onsetDeg().orElseThrow(), 1e-6);
    }

    /** Every 5 deg, so that the bend and the onset never lie between the same two loads. */
    private static MeasuredClampLoad loads(double yieldDeg, double ratioPast, double shiftDeg, double scale) {
        return new MeasuredClampLoad(
                "Q1",
                "1",
                1,
                IntStream.rangeClosed(1, 100)
                        .mapToDouble(i -> 5.0 * i)
                        .mapToObj(deg -> new Point(
                                deg + shiftDeg,
                                scale * 0.15 * (Math.min(deg, yieldDeg) + ratioPast * Math.max(0, deg - yieldDeg))))
                        .toList());
    }
}
