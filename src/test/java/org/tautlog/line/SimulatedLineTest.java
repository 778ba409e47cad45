package org.tautlog.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.tautlog.joint.FirstYield;
import org.tautlog.joint.TorsionRule;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SimulatedLineTest {
    private static final long SEED = 7;

    private List<SimulatedTightening> shift = List.of();

    @BeforeAll
    void run_one_shift() {
        shift = SimulatedLine.of(SimulatedLine.ENGINES_PER_SHIFT, SEED)
                .tightenings()
                .toList();
    }

    @Test
    void one_seed_gives_the_same_shift_on_any_number_of_threads() {
        var inParallel = new ArrayList<SimulatedTightening>();
        SimulatedLine.of(SimulatedLine.ENGINES_PER_SHIFT, SEED).forEach(inParallel::add);
        assertEquals(shift, inParallel);
    }

    @Test
    void another_seed_gives_another_shift() {
        var one = SimulatedLine.of(2, 1).tightenings().toList();
        var other = SimulatedLine.of(2, 2).tightenings().toList();
        assertNotEquals(one.get(0).trace().curve(), other.get(0).trace().curve());
    }

    @Test
    void a_shorter_run_is_the_beginning_of_a_longer_one() {
        var shorter = SimulatedLine.of(5, SEED).tightenings().toList();
        assertTrue(shift.containsAll(shorter));
    }

    @Test
    void every_bolt_of_every_engine_is_tightened_in_time_order() {
        var bolts = shift.stream()
                .map(done -> done.trace().identity().serial()
                        + '/'
                        + done.trace().identity().bolt())
                .collect(Collectors.toSet());
        assertEquals(64 * 8, bolts.size());
        var times = shift.stream()
                .map(done -> Objects.requireNonNull(done.trace().identity().time()))
                .toList();
        assertEquals(times.stream().sorted().toList(), times);
    }

    @Test
    void every_fault_happens_in_a_shift_and_about_one_in_twenty_five_is_faulty() {
        var seen = EnumSet.noneOf(Fault.class);
        shift.forEach(done -> seen.add(done.truth().fault()));
        assertEquals(EnumSet.allOf(Fault.class), seen);
        assertEquals(23, count(shift, false), "faults other than the drifted spindle's");
        long drifted = shift.stream()
                .filter(done -> done.truth().fault() == Fault.TRANSDUCER_OUT_OF_SCALE)
                .count();
        assertTrue(drifted >= 30 && drifted <= 36, drifted + " tightenings under the drifted transducer");
    }

    @Test
    void a_sound_tightening_ends_just_short_of_yield() {
        int seen = 0;
        for (var done : shift) {
            if (done.truth().fault() == Fault.NONE) {
                double share = yieldShare(done.truth());
                assertTrue(share > 0.84 && share < 0.98, done.trace().identity().words() + " ends at " + share);
                seen++;
            }
        }
        assertTrue(seen > 400, "saw " + seen);
    }

    @Test
    void truth_knows_a_bad_bolt_by_its_fault() {
        for (var done : shift) {
            assertEquals(done.truth().fault().leavesASoundBolt(), done.truth().good());
        }
    }

    @Test
    void only_the_drifted_spindle_shows_too_much_torque() {
        var drifted = shift.stream()
                .filter(done -> done.truth().fault() == Fault.TRANSDUCER_OUT_OF_SCALE)
                .toList();
        assertEquals(
                1,
                drifted.stream()
                        .map(done -> done.trace().identity().station()
                                + done.trace().identity().spindle())
                        .distinct()
                        .count());
        var sameSpindle = shift.stream()
                .filter(done -> done.truth().fault() == Fault.NONE)
                .filter(done -> done.trace()
                        .identity()
                        .bolt()
                        .equals(drifted.get(0).trace().identity().bolt()))
                .toList();
        double shownMore = meanTorquePerLoad(drifted) / meanTorquePerLoad(sameSpindle);
        assertEquals(1.06, shownMore, 0.025);
    }

    @Test
    void a_line_builds_at_least_one_engine() {
        assertThrows(IllegalArgumentException.class, () -> SimulatedLine.of(0, 1));
    }

    private static long count(List<SimulatedTightening> shift, boolean drifted) {
        return shift.stream()
                .filter(done -> done.truth().fault() != Fault.NONE)
                .filter(done -> drifted == (done.truth().fault() == Fault.TRANSDUCER_OUT_OF_SCALE))
                .count();
    }

    private static double yieldShare(Truth truth) {
        var joint = FenwaterEngine.joint();
        var bolt = joint.bolt().withMaterial(joint.bolt().material().withYieldStrengthMPa(truth.yieldStrengthMPa()));
        return truth.clampLoadKN()
                * 1000
                / FirstYield.turningPreloadN(bolt, truth.threadMu(), TorsionRule.FULLY_PLASTIC);
    }

    /** Highest torque shown, per kN and per unit of what friction and pitch ask. */
    private static double meanTorquePerLoad(List<SimulatedTightening> tightenings) {
        return tightenings.stream()
                .mapToDouble(done -> {
                    var curve = done.trace().curve();
                    double highest = 0;
                    for (int i = 0; i < curve.size(); i++) {
                        highest = Math.max(highest, curve.torqueNm(i));
                    }
                    double leverMm = 0.24
                            + 5.2 * done.truth().threadMu()
                            + 6.5 * done.truth().underHeadMu();
                    return highest / done.truth().clampLoadKN() / leverMm;
                })
                .average()
                .orElseThrow();
    }
}
