package org.tautlog.review.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tautlog.line.FenwaterEngine;

/** Cues drawn with the scatter of a good line and shifted along one cause, along two, along none. */
class RankingTest {
    private static final int N = 32;
    private static final Sensitivities FENWATER =
            Sensitivities.of(FenwaterEngine.specification(), 1200).orElseThrow();
    private static final Map<Cue, Double> SPREADS = Map.of(
            Cue.PREVAILING_TORQUE, 0.12,
            Cue.RUNDOWN, 12.0,
            Cue.SNUG_TORQUE, 0.06,
            Cue.TORQUE_RATE, 0.003,
            Cue.TURN, 0.4,
            Cue.FINAL_TORQUE, 1.3,
            Cue.END_GRADIENT, 0.06,
            Cue.SPRING_BACK, 0.06);

    @ParameterizedTest
    @EnumSource(Cause.class)
    void a_shift_along_one_cause_is_its_own(Cause cause) {
        var pattern = cause.shareIn(Pattern.ONE_SPINDLE) > 0.5 ? Pattern.ONE_SPINDLE : Pattern.ONE_LOT;
        var found = ranked(pattern, Map.of(cause, 2 * cause.usualSize()));
        assertEquals(cause, found.ranked().get(0).cause());
        assertEquals(Optional.of(cause), found.named().map(RankedCause::cause));
        assertEquals(2 * cause.usualSize(), found.ranked().get(0).size(), cause.usualSize());
    }

    @Test
    void where_nothing_moved_chance_is_likeliest_and_nothing_is_named() {
        var found = ranked(Pattern.ONE_SPINDLE, Map.of());
        assertTrue(found.chance() > found.ranked().get(0).likelihood());
        assertEquals(Optional.empty(), found.named());
    }

    @Test
    void two_causes_at_once_are_taken_for_neither() {
        var found = ranked(Pattern.ONE_SPINDLE, Map.of(Cause.TORQUE_SCALE, 0.08, Cause.TURN, 6.0));
        assertEquals(Optional.empty(), found.named());
        assertTrue(found.unlikeAll());
    }

    /** Without spring-back and prevailing torque, friction and transducer move the rest nearly alike. */
    @Test
    void friction_and_transducer_are_not_told_apart_by_torques_alone() {
        var random = RandomSource.XO_SHI_RO_256_PP.create(7);
        var shift = Map.of(Cause.FRICTION, 0.06);
        var torques = List.of(Cue.TORQUE_RATE, Cue.FINAL_TORQUE);
        var without = rows(random, Map.of());
        var with = rows(random, shift);
        without.forEach(row -> row.keySet().retainAll(torques));
        with.forEach(row -> row.keySet().retainAll(torques));
        var found = Ranking.of(Moved.of(without, with).orElseThrow(), FENWATER, Pattern.ONE_TIGHTENING, "made");
        assertEquals(Optional.empty(), found.named());
        assertTrue(found.left().size() >= 2, found.left().toString());
    }

    @Test
    void too_few_tightenings_give_no_shift() {
        var random = RandomSource.XO_SHI_RO_256_PP.create(7);
        assertTrue(Moved.of(
                        rows(random, Map.of()).subList(0, 5),
                        rows(random, Map.of()).subList(0, 3))
                .isEmpty());
    }

    private static Diagnosis ranked(Pattern pattern, Map<Cause, Double> sizes) {
        var random = RandomSource.XO_SHI_RO_256_PP.create(7);
        var moved = Moved.of(rows(random, Map.of()), rows(random, sizes)).orElseThrow();
        return Ranking.of(moved, FENWATER, pattern, "made");
    }

    private static List<Map<Cue, Double>> rows(UniformRandomProvider random, Map<Cause, Double> sizes) {
        var gauss = ZigguratSampler.NormalizedGaussian.of(random);
        var rows = new ArrayList<Map<Cue, Double>>();
        for (int i = 0; i < N; i++) {
            var row = new EnumMap<Cue, Double>(Cue.class);
            for (var cue : Cue.values()) {
                var spread = SPREADS.get(cue);
                if (spread != null) {
                    double shift = sizes.entrySet().stream()
                            .mapToDouble(entry -> entry.getValue() * FENWATER.of(entry.getKey(), cue))
                            .sum();
                    row.put(cue, shift + spread * gauss.sample());
                }
            }
            rows.add(row);
        }
        return rows;
    }
}
