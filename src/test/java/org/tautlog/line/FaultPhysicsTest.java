package org.tautlog.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each fault changes what its physics change, and leaves the rest. */
class FaultPhysicsTest {
    private static final int ENGINE = 5;
    private static final int BOLT = 2;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_dry_bolt_asks_more_torque_at_the_same_angle_for_about_the_same_load(long seed) {
        var usual = bolt(Fault.NONE, seed);
        var dry = bolt(Fault.DRY_BOLT, seed);
        double headDeg = contactDeg(Fault.NONE, seed) + 300;
        double more = dry.torqueNm(headDeg) / usual.torqueNm(headDeg);
        assertTrue(more > 1.4 && more < 2.1, "torque is " + more + " times that of a usual bolt");
        assertEquals(1, dry.loadN(headDeg) / usual.loadN(headDeg), 0.06);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_weak_bolt_starts_to_yield_earlier_and_is_as_stiff(long seed) {
        var usual = bolt(Fault.NONE, seed);
        var weak = bolt(Fault.WEAK_BOLT, seed);
        double earlierDeg = usual.onsetHeadDeg() - weak.onsetHeadDeg();
        assertTrue(earlierDeg > 80, "onset is earlier by " + earlierDeg + " deg");
        double headDeg = contactDeg(Fault.NONE, seed) + 150;
        assertEquals(1, weak.torqueNm(headDeg) / usual.torqueNm(headDeg), 0.01);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_missing_washer_lengthens_the_rundown_by_its_thickness_and_stiffens_the_joint(long seed) {
        double laterDeg = contactDeg(Fault.WASHER_MISSING, seed) - contactDeg(Fault.NONE, seed);
        assertEquals(FenwaterEngine.WASHER_MM / 1.5 * 360, laterDeg, 1e-9);
        var usual = Bench.setup(Fault.NONE, ENGINE, BOLT, seed).joint();
        var without = Bench.setup(Fault.WASHER_MISSING, ENGINE, BOLT, seed).joint();
        assertTrue(without.preloadPerDegN() > usual.preloadPerDegN());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void something_soft_between_the_parts_costs_clamp_load(long seed) {
        assertTrue(run(Fault.SOFT_LAYER, seed).truth().clampLoadKN()
                < 0.9 * run(Fault.NONE, seed).truth().clampLoadKN());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_slipping_socket_counts_angle_that_turns_no_bolt(long seed) {
        var slipped = run(Fault.ANGLE_SLIP, seed);
        double counted = FenwaterEngine.METHOD.turnDeg() - slipped.truth().turnDeg();
        assertTrue(counted > 35 && counted < 80, "slipped by " + counted + " deg");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_jammed_nut_clamps_nothing_and_a_burr_leaves_little_turn_for_the_joint(long seed) {
        assertEquals(0, run(Fault.CROSS_THREADED, seed).truth().clampLoadKN(), 3);
        assertTrue(run(Fault.NOT_SEATED, seed).truth().clampLoadKN() < 20);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_bolt_tightened_twice_ends_past_its_onset(long seed) {
        var truth = run(Fault.ALREADY_TIGHT, seed).truth();
        assertTrue(truth.onsetPastSnugDeg() != null && truth.onsetPastSnugDeg() < 200, "onset " + truth);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_drive_springs_back_at_the_stop_and_breaks_the_bolt_loose_after_the_pause(long seed) {
        var curve = run(Fault.NONE, seed).trace().curve();
        int peak = 0;
        for (int i = 0; i < curve.size(); i++) {
            peak = curve.angleDeg(i) > curve.angleDeg(peak) ? i : peak;
        }
        double backDeg = curve.angleDeg(peak) - curve.angleDeg(curve.size() - 1);
        assertTrue(backDeg > 1.5 && backDeg < 4.5, "springs back by " + backDeg + " deg");
        assertTrue(curve.torqueNm(curve.size() - 1) < 0.3 * curve.torqueNm(peak));
    }

    private static TurnedBolt bolt(Fault fault, long seed) {
        return new TurnedBolt(Bench.setup(fault, ENGINE, BOLT, seed));
    }

    private static double contactDeg(Fault fault, long seed) {
        return Bench.setup(fault, ENGINE, BOLT, seed).contactDeg();
    }

    private static SimulatedTightening run(Fault fault, long seed) {
        return new Attempt(
                        Station.S40.spindles(seed).get(1),
                        ENGINE,
                        BOLT,
                        1,
                        SimulatedLine.START,
                        fault,
                        Bench.setup(fault, ENGINE, BOLT, seed),
                        Bench.programme(fault, ENGINE, BOLT, seed))
                .run(seed);
    }
}
