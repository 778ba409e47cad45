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
import org.tautlog.review.stream.Cue;

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
        var pattern = cause.comesWithBolts() ? Pattern.ONE_LOT : Pattern.ONE_SPINDLE;
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
        var found = ranked(Moved.of(without, with).orElseThrow(), Pattern.ONE_TIGHTENING);
        assertEquals(Optional.empty(), found.named());
        assertTrue(found.left().size() >= 2, found.left().toString());
    }

    /** An export that ends at the stop has no spring-back, and then a worn drive looks as a soft joint or an encoder does. */
    @Test
    void without_spring_back_a_worn_drive_stays_open_and_the_check_that_tells_it_is_given() {
        var random = RandomSource.XO_SHI_RO_256_PP.create(7);
        var without = rows(random, Map.of());
        var with = rows(random, Map.of(Cause.WIND_UP, 2.0));
        without.forEach(row -> row.keySet().removeAll(List.of(Cue.SPRING_BACK, Cue.RUNDOWN)));
        with.forEach(row -> row.keySet().removeAll(List.of(Cue.SPRING_BACK, Cue.RUNDOWN)));
        var found = ranked(Moved.of(without, with).orElseThrow(), Pattern.ONE_SPINDLE);
        assertEquals(Optional.empty(), found.named());
        assertTrue(
                found.left().stream().anyMatch(one -> one.cause() == Cause.WIND_UP),
                found.left().toString());
        assertTrue(
                found.separations().stream()
                        .anyMatch(
                                one -> one.check() == FloorCheck.HELD_SOCKET || one.check() == FloorCheck.MARKED_TURN),
                found.toString());
    }

    /** The rest of the curve alone would make it 50 times as likely as anything else. */
    @Test
    void a_transducer_is_not_named_where_the_torque_rate_did_not_move_with_the_torques() {
        var random = RandomSource.XO_SHI_RO_256_PP.create(7);
        var without = rows(random, Map.of());
        var with = rows(random, Map.of(Cause.TORQUE_SCALE, 0.06));
        assertEquals(
                Optional.of(Cause.TORQUE_SCALE),
                ranked(Moved.of(without, with).orElseThrow(), Pattern.ONE_SPINDLE)
                        .named()
                        .map(RankedCause::cause));
        double rate = 0.06 * FENWATER.of(Cause.TORQUE_SCALE, Cue.TORQUE_RATE);
        with.forEach(row -> row.computeIfPresent(Cue.TORQUE_RATE, (cue, value) -> value - rate));
        var found = ranked(Moved.of(without, with).orElseThrow(), Pattern.ONE_SPINDLE);
        var best = found.ranked().get(0);
        assertEquals(Cause.TORQUE_SCALE, best.cause());
        assertTrue(best.likelihood() > 0.9, found.toString());
        assertTrue(
                best.contradicting().stream().anyMatch(clue -> clue.cue() == Cue.TORQUE_RATE),
                best.contradicting().toString());
        assertEquals(Optional.empty(), found.named());
    }

    @Test
    void a_lot_of_higher_friction_and_lower_strength_is_not_taken_for_a_stiffer_joint() {
        var found = ranked(Pattern.ONE_LOT, Map.of(Cause.FRICTION, 0.12, Cause.BOLT_STRENGTH, -0.08));
        assertTrue(found.named().isEmpty(), found.toString());
    }

    /** A programme that moved as a lot began shows with the lot, and no bolt sets the torque at which the stage ends. */
    @Test
    void the_snug_stage_is_never_the_cause_of_a_bolt_lot() {
        var shift = Map.of(Cause.SNUG_TORQUE, 0.5);
        assertEquals(
                Optional.of(Cause.SNUG_TORQUE),
                ranked(Pattern.ALL_SPINDLES, shift).named().map(RankedCause::cause));
        var lot = ranked(Pattern.ONE_LOT, shift);
        assertEquals(Optional.empty(), lot.named());
        assertTrue(lot.left().stream().noneMatch(one -> one.cause() == Cause.SNUG_TORQUE), lot.toString());
    }

    /** The same stray, once of one tightening of hundreds, once of a spindle that moved. */
    @Test
    void one_stray_tightening_is_weak_evidence() {
        var random = RandomSource.XO_SHI_RO_256_PP.create(7);
        var without = rows(random, Map.of());
        var with = rows(random, Map.of(Cause.SNUG_TORQUE, 0.12)).subList(0, 1);
        var moved = Moved.of(without, with).orElseThrow();
        var spindle = Ranking.of(moved, FENWATER, Ordinary.none(), Pattern.ONE_SPINDLE, Against.BEFORE, "made");
        var one = Ranking.of(
                moved, FENWATER, Ordinary.stray(), Pattern.ONE_TIGHTENING, Against.OTHER_TIGHTENINGS, "made");
        assertEquals(Optional.of(Cause.SNUG_TORQUE), spindle.named().map(RankedCause::cause));
        assertTrue(one.chance() > spindle.chance(), one.toString());
        assertEquals(Optional.empty(), one.named());
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
        return ranked(moved, pattern);
    }

    private static Diagnosis ranked(Moved moved, Pattern pattern) {
        var ordinary = pattern == Pattern.ONE_LOT ? Ordinary.goodLots() : Ordinary.none();
        return Ranking.of(moved, FENWATER, ordinary, pattern, Against.BEFORE, "made");
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
