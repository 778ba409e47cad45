package org.tautlog.review.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.review.stream.Cue;
import org.tautlog.review.stream.CueReading;
import org.tautlog.review.stream.PastShift;
import org.tautlog.trace.TraceIdentity;

/** Cues of two stations of four spindles in two shifts, made with the scatter of a good line and with lots that move them all. */
class OffSinceTest {
    private static final int ENGINES = 40;
    private static final int SPINDLES = 8;
    private static final Sensitivities FENWATER =
            Sensitivities.of(FenwaterEngine.specification(), 1200).orElseThrow();
    private static final Map<Cue, double[]> LEVEL_AND_SPREAD = Map.of(
            Cue.PREVAILING_TORQUE, new double[] {1.6, 0.12},
            Cue.RUNDOWN, new double[] {1200, 12},
            Cue.SNUG_TORQUE, new double[] {20, 0.06},
            Cue.TORQUE_RATE, new double[] {0.14, 0.003},
            Cue.TURN, new double[] {360, 0.4},
            Cue.FINAL_TORQUE, new double[] {68, 1.3},
            Cue.END_GRADIENT, new double[] {0.87, 0.06},
            Cue.SPRING_BACK, new double[] {2.7, 0.06});

    /** One pair in a hundred may name a spindle wrongly. */
    @Test
    void lots_that_move_all_spindles_make_none_of_them_differ() {
        int differed = 0;
        for (int seed = 1; seed <= 100; seed++) {
            var found = since(seed, Map.of(), 0);
            assertTrue(found.stream().allMatch(one -> one.named().isEmpty()), found.toString());
            differed += found.isEmpty() ? 0 : 1;
        }
        assertTrue(differed <= 3, "pairs with a spindle that differs: " + differed);
    }

    /** The station's others hold the one that moved, and their median with it. */
    @Test
    void a_spindle_far_off_is_named_and_none_beside_it() {
        for (int seed = 1; seed <= 10; seed++) {
            var found = since(seed, Map.of(2, Map.of(Cause.TORQUE_SCALE, 0.2)), 0);
            assertEquals(List.of("S40/2 TORQUE_SCALE"), words(found));
        }
    }

    @Test
    void two_spindles_off_are_each_named_by_their_own_cause() {
        var found = since(3, Map.of(1, Map.of(Cause.TORQUE_SCALE, 0.1), 6, Map.of(Cause.WIND_UP, 0.5)), 0);
        assertEquals(
                List.of("S40/1 TORQUE_SCALE", "S50/2 WIND_UP"),
                words(found).stream().sorted().toList());
    }

    @Test
    void where_half_of_the_spindles_moved_against_the_other_half_nobody_knows_which() {
        var scale = Map.of(Cause.TORQUE_SCALE, 0.1);
        var found = since(3, Map.of(1, scale, 4, scale), 0);
        assertEquals(2, found.size(), found.toString());
        assertTrue(
                found.stream().allMatch(one -> one.whyNot().startsWith("half of its station's spindles")),
                found.toString());
    }

    /** Where all values of a spindle round to one step, a small move of all spindles carries those of some to the next. */
    @Test
    void coarse_steps_of_the_recording_make_no_spindle_differ() {
        int differed = 0;
        for (int seed = 1; seed <= 100; seed++) {
            differed += since(seed, Map.of(), 0.3).isEmpty() ? 0 : 1;
        }
        assertTrue(differed <= 3, "pairs with a spindle that differs: " + differed);
    }

    /** By their streams alone most such troubles are the transducer's; that is not enough between two shifts. */
    @Test
    void friction_and_transducer_stay_open_without_a_cue_that_tells_them() {
        var before = shift(7, 0, Map.of(), 0, true);
        var now = shift(7, 1, Map.of(2, Map.of(Cause.TORQUE_SCALE, 0.06)), 0, true);
        var found = Diagnoses.since(past(before), past(now), FenwaterEngine.specification());
        assertEquals(1, found.size(), found.toString());
        var left = found.get(0).left().stream().map(RankedCause::cause).toList();
        assertTrue(found.get(0).named().isEmpty(), found.toString());
        assertTrue(left.containsAll(List.of(Cause.TORQUE_SCALE, Cause.FRICTION)), left.toString());
        assertEquals(
                FloorCheck.REFERENCE_TRANSDUCER,
                found.get(0).separations().get(0).check());
    }

    private static List<Diagnosis> since(long seed, Map<Integer, Map<Cause, Double>> off, double springBackStepDeg) {
        return Diagnoses.since(
                past(shift(seed, 0, Map.of(), springBackStepDeg, false)),
                past(shift(seed, 1, off, springBackStepDeg, false)),
                FenwaterEngine.specification());
    }

    private static List<String> words(List<Diagnosis> found) {
        return found.stream()
                .map(one -> one.what()
                        + ' '
                        + one.named().map(named -> named.cause().name()).orElse("cannot tell"))
                .toList();
    }

    private static PastShift past(List<CueReading> readings) {
        return new PastShift(List.of(), List.of(), readings);
    }

    private static List<CueReading> shift(
            long seed,
            int number,
            Map<Integer, Map<Cause, Double>> off,
            double springBackStepDeg,
            boolean torquesOnly) {
        var tools = ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_SHI_RO_256_PP.create(seed));
        var own = IntStream.range(0, SPINDLES)
                .mapToObj(i -> Map.of(Cause.TORQUE_SCALE, 0.004 * tools.sample(), Cause.WIND_UP, 0.1 * tools.sample()))
                .toList();
        var random = RandomSource.XO_SHI_RO_256_PP.create(1000 * seed + number);
        var gauss = ZigguratSampler.NormalizedGaussian.of(random);
        var lot = Map.of(Cause.FRICTION, 0.03 * gauss.sample(), Cause.BOLT_STRENGTH, 0.015 * gauss.sample());
        var readings = new ArrayList<CueReading>();
        for (int engine = 1; engine <= ENGINES; engine++) {
            for (int spindle = 1; spindle <= SPINDLES; spindle++) {
                var sizes = new EnumMap<Cause, Double>(Cause.class);
                sizes.putAll(lot);
                sizes.putAll(own.get(spindle - 1));
                off.getOrDefault(spindle, Map.of()).forEach((cause, size) -> sizes.merge(cause, size, Double::sum));
                var cues = cues(random, sizes);
                if (springBackStepDeg > 0) {
                    cues.computeIfPresent(
                            Cue.SPRING_BACK, (cue, deg) -> springBackStepDeg * Math.round(deg / springBackStepDeg));
                }
                if (torquesOnly) {
                    cues.keySet().retainAll(List.of(Cue.TORQUE_RATE, Cue.FINAL_TORQUE));
                }
                var serial = FenwaterEngine.serial(ENGINES * number + engine);
                var station = spindle <= SPINDLES / 2 ? "S40" : "S50";
                var name = Integer.toString(1 + (spindle - 1) % (SPINDLES / 2));
                var bolt = Integer.toString(spindle);
                readings.add(
                        new CueReading(new TraceIdentity(serial, station, name, bolt, 1, null, "A" + number), cues));
            }
        }
        return readings;
    }

    private static Map<Cue, Double> cues(UniformRandomProvider random, Map<Cause, Double> sizes) {
        var gauss = ZigguratSampler.NormalizedGaussian.of(random);
        var cues = new EnumMap<Cue, Double>(Cue.class);
        for (var cue : Cue.values()) {
            var usual = LEVEL_AND_SPREAD.get(cue);
            if (usual != null) {
                double shift = sizes.entrySet().stream()
                        .mapToDouble(one -> one.getValue() * FENWATER.of(one.getKey(), cue))
                        .sum();
                cues.put(cue, usual[0] + shift + usual[1] * gauss.sample());
            }
        }
        return cues;
    }
}
