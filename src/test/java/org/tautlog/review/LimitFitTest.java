package org.tautlog.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.OnsetLimits;
import org.tautlog.joint.window.Window;

class LimitFitTest {
    private static final WindowSpread SPREAD = MadeWindow.spread();

    /** Counted here one by one, on the line's own turns. */
    @Test
    void a_limit_has_its_place_among_the_real_tightenings() {
        var turns = SPREAD.values(WindowFeature.TURN);
        Arrays.sort(turns);
        double limit = (turns[9] + turns[10]) / 2;
        var fit = LimitFit.of(window(new Band(limit, Double.POSITIVE_INFINITY)), SPREAD)
                .get(0);
        assertEquals(WindowFeature.TURN, fit.feature());
        assertEquals(10, fit.outside());
        assertEquals(10.0 / turns.length, fit.shareBelow(), 1e-12);
        assertEquals((fit.median() - limit) / fit.robustDeviation(), fit.distanceDeviations(), 1e-12);
        assertTrue(fit.distanceDeviations() > 0);
    }

    /** Worked out here from the definition. */
    @Test
    void the_robust_deviation_is_that_of_a_normal_distribution() {
        var fit = LimitFit.of(window(new Band(-1e9, 1e9)), SPREAD).get(0);
        var turns = SPREAD.values(WindowFeature.TURN);
        double median = median(turns);
        double deviation =
                median(Arrays.stream(turns).map(turn -> Math.abs(turn - median)).toArray());
        assertEquals(1.4826 * deviation, fit.robustDeviation(), 1e-9);
    }

    @Test
    void a_tightening_that_fails_two_limits_is_counted_once() {
        assertEquals(
                SPREAD.tightenings(),
                SPREAD.outside(new Window(
                        new Band(0, 1),
                        new Band(0, 1),
                        Band.open(),
                        Band.open(),
                        Band.open(),
                        new OnsetLimits(Band.open(), Band.open(), 0))));
        assertEquals(0, SPREAD.outside(window(Band.open())));
    }

    @Test
    void open_limits_and_features_that_hardly_any_tightening_has_are_left_out() {
        assertTrue(LimitFit.of(window(Band.open()), SPREAD).isEmpty());
        var onset = new Window(
                Band.open(),
                Band.open(),
                Band.open(),
                Band.open(),
                Band.open(),
                new OnsetLimits(new Band(0, 1), Band.open(), 0));
        assertTrue(LimitFit.of(onset, SPREAD).isEmpty());
    }

    @Test
    void a_review_holds_both_windows_against_the_line() {
        var review = MadeWindow.review();
        assertTrue(review.observed().isEmpty());
        var observed = review.with(SPREAD).observed().orElseThrow();
        assertEquals(SPREAD.tightenings(), observed.tightenings());
        assertTrue(observed.outsidePresent() < observed.tightenings() / 4);
        assertTrue(observed.present().stream().anyMatch(fit -> fit.feature() == WindowFeature.FINAL_TORQUE));
    }

    private static Window window(Band turn) {
        return new Window(
                Band.open(), turn, Band.open(), Band.open(), Band.open(), new OnsetLimits(Band.open(), Band.open(), 0));
    }

    private static double median(double[] values) {
        var sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }
}
