package org.tautlog.signature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tautlog.joint.BoltMaterial;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Joints;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.line.Fault;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.line.Truth;

/** Against the simulated line, which knows what no plant does: the bolt's true load. */
class ClampLoadTest {
    private static final StatedJoint STATED =
            FenwaterEngine.specification().statedJoint().orElseThrow();

    /** Faults of tool, bolt and friction: the stated layers are the real ones, so the estimate must hold. */
    private static final Set<Fault> OF_THE_STATED_LAYERS = EnumSet.of(
            Fault.NONE,
            Fault.WEAK_BOLT,
            Fault.TURN_SHORT,
            Fault.TURN_LONG,
            Fault.DRY_BOLT,
            Fault.STICK_SLIP,
            Fault.REPEATED_ATTEMPT,
            Fault.TRANSDUCER_OUT_OF_SCALE);

    private static List<Estimated> shift = List.of();

    /** One simulated tightening with its estimate. */
    private record Estimated(Truth truth, Signature signature, ClampLoad load) {
        boolean held() {
            return load.lowKN().number() <= truth.clampLoadKN()
                    && truth.clampLoadKN() <= load.highKN().number();
        }

        double error() {
            return load.loadKN().number() / truth.clampLoadKN() - 1;
        }
    }

    @BeforeAll
    static void tighten() {
        var specification = FenwaterEngine.specification();
        shift = SimulatedLine.of(64, 5)
                .tightenings()
                .map(done -> {
                    var read =
                            SignatureReader.read(done.trace().curve(), specification.method(), specification.reading());
                    return new Estimated(done.truth(), read, ClampLoadEstimate.of(read, STATED));
                })
                .collect(Collectors.toList());
    }

    @Test
    void the_bounds_hold_at_least_the_share_that_they_claim() {
        var of = shift.stream()
                .filter(one -> OF_THE_STATED_LAYERS.contains(one.truth().fault()))
                .filter(one -> one.load().loadKN().isFound())
                .toList();
        long held = of.stream().filter(Estimated::held).count();
        assertTrue(of.size() > 450, "the count saw " + of.size());
        assertTrue(held >= ClampLoad.COVERAGE * of.size(), held + " of " + of.size() + " within their bounds");
    }

    /**
     * The stated joint is never quite the real one: here everything is stiffer or softer by what the budget grants stiffness,
     * shank twist and cone together, 4, 2.5 and 2.5 percent in squares.
     */
    @Test
    void the_bounds_hold_what_they_claim_where_the_stated_joint_is_off_by_the_budget() {
        var random = RandomSource.XO_SHI_RO_256_PP.create(5);
        var gauss = ZigguratSampler.NormalizedGaussian.of(random);
        var sound = shift.stream()
                .filter(one -> one.truth().fault() == Fault.NONE)
                .filter(one -> one.signature().onset().endState() == EndState.ELASTIC)
                .toList();
        int held = 0;
        for (var one : sound) {
            var off = stiffer(1 + Math.sqrt(0.04 * 0.04 + 2 * 0.025 * 0.025) * gauss.sample());
            held += new Estimated(one.truth(), one.signature(), ClampLoadEstimate.of(one.signature(), off)).held()
                    ? 1
                    : 0;
        }
        double share = (double) held / sound.size();
        assertTrue(sound.size() > 400, "the count saw " + sound.size());
        assertTrue(share >= ClampLoad.COVERAGE && share < 1, held + " of " + sound.size());
    }

    private static StatedJoint stiffer(double factor) {
        var joint = STATED.joint();
        var bolt = joint.bolt();
        var steel = bolt.material();
        var layers = joint.layers().stream()
                .map(layer -> new Layer(
                        layer.name(),
                        layer.thicknessMm(),
                        new LayerMaterial(
                                layer.material().name(),
                                layer.material().youngsModulusMPa() * factor,
                                layer.material().expansionPerK()),
                        layer.shape()))
                .toList();
        var stiffer = bolt.withMaterial(new BoltMaterial(
                steel.youngsModulusMPa() * factor,
                steel.yieldStrengthMPa(),
                steel.ultimateStrengthMPa(),
                steel.expansionPerK(),
                steel.uniformElongation(),
                steel.hardeningModulusMPa()));
        return new StatedJoint(
                new BoltedJoint(stiffer, layers, joint.friction()),
                STATED.prevailingTorqueNm(),
                STATED.driveNmPerDegOrNull(),
                STATED.warmUpOrNull(),
                STATED.tolerance());
    }

    /** The simulated joint is the stated one, and its friction does not drift: what is left is the reading of the curve. */
    @Test
    void sound_tightenings_are_estimated_within_three_percent() {
        for (var one : shift) {
            if (one.truth().fault() == Fault.NONE) {
                assertEquals(0, one.error(), 0.03, one.toString());
            }
        }
    }

    /** Some tightenings of this line end where the gradient has begun to fall. */
    @Test
    void past_the_knee_the_torque_is_carried_back() {
        var carried = shift.stream()
                .filter(one -> one.load().basis() == ClampLoad.Basis.TORQUE_CARRIED_BACK)
                .filter(one -> OF_THE_STATED_LAYERS.contains(one.truth().fault()))
                .toList();
        assertTrue(carried.size() >= 5, "the count saw " + carried.size());
        for (var one : carried) {
            assertEquals(0, one.error(), 0.03, one.toString());
        }
    }

    @Test
    void a_weak_bolt_has_low_load_and_loses_more_of_it_when_warm() {
        var weak = of(Fault.WEAK_BOLT);
        assertEquals(2, weak.size());
        for (var one : weak) {
            assertTrue(one.load().loadKN().number() < 36, one.toString());
            assertTrue(one.load().afterWarmUpKN().number() < one.load().loadKN().number() - 2, one.toString());
        }
    }

    @Test
    void a_dry_bolt_shows_in_its_friction_and_not_in_its_bounds() {
        for (var one : of(Fault.DRY_BOLT)) {
            assertTrue(one.held());
            assertEquals(one.truth().threadMu(), one.load().apparentFriction().number(), 0.01);
        }
    }

    /** The stated stiffness is not this joint's then. The estimate alone is high; the judge knows the finding and leaves it out. */
    @Test
    void something_soft_between_the_parts_is_outside_what_the_estimate_can_know() {
        for (var one : of(Fault.SOFT_LAYER)) {
            assertFalse(one.held());
        }
    }

    /** Shares added in squares, by hand: 4, 2.5, 2.5 with 2.5 or 5 percent; two standard deviations either side. */
    @ParameterizedTest
    @CsvSource({"ELASTIC,0.1179", "ONSET_ZONE,0.1463", "PLASTIC,0.1463"})
    void the_bounds_follow_the_budget(EndState state, double share) {
        var load = ClampLoadEstimate.of(ReadSignatures.of(0.12, 300, 36, state), STATED);
        assertEquals(1 + share, load.highKN().number() / load.loadKN().number(), 1e-4);
        assertEquals(1 - share, load.lowKN().number() / load.loadKN().number(), 1e-4);
    }

    @Test
    void no_bolt_bears_more_than_its_strength() {
        var load = ClampLoadEstimate.of(ReadSignatures.of(0.12, 800, 96, EndState.PLASTIC), STATED);
        assertEquals(ClampLoad.Basis.BOLT_STRENGTH, load.basis());
        double areaMm2 = Math.PI / 4 * 8.2 * 8.2;
        double strongestKN = STATED.joint().bolt().material().ultimateStrengthMPa() * areaMm2 / 1000;
        assertTrue(load.loadKN().number() < strongestKN);
        assertTrue(load.loadKN().number() > 0.7 * strongestKN);
    }

    @ParameterizedTest
    @EnumSource(value = EndState.class, names = "UNKNOWN", mode = EnumSource.Mode.INCLUDE)
    void a_curve_without_a_state_gives_no_load(EndState state) {
        assertFalse(ClampLoadEstimate.of(ReadSignatures.of(0.12, 300, 36, state), STATED)
                .loadKN()
                .isFound());
    }

    @Test
    void angle_and_torque_that_contradict_each_other_give_no_load() {
        var load = ClampLoadEstimate.of(ReadSignatures.of(0.12, 300, 20, EndState.ELASTIC), STATED);
        assertTrue(load.loadKN().whyMissing().startsWith("angle and torque contradict each other"));
    }

    @Test
    void without_a_stated_warm_up_there_is_a_load_but_none_after_it() {
        var cold = new StatedJoint(Joints.longThroughBolt(), 0, null, null, Map.of());
        var load = ClampLoadEstimate.of(ReadSignatures.of(0.12, 300, 36, EndState.ELASTIC), cold);
        assertTrue(load.loadKN().isFound());
        assertEquals("the specification states no warm-up", load.afterWarmUpKN().whyMissing());
    }

    private static List<Estimated> of(Fault fault) {
        var found = shift.stream().filter(one -> one.truth().fault() == fault).toList();
        assertFalse(found.isEmpty(), "no " + fault);
        return found;
    }
}
