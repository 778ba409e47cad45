package org.tautlog.review.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tautlog.signature.MadeCurve;

/** Faults of a known size at a known place along the curve: found, and found there. */
class DepartureOfSizeTest {
    private static final int TRIES = 20;

    private final GoodCurves good = new GoodCurves(77);
    private final Envelope envelope = good.envelope(48);

    static Stream<Arguments> faults() {
        return Stream.of(
                fault(
                        "torque 3 % high over 30 deg",
                        150, 10, made -> made.torqueOfTurn = deg -> hump(deg, 135, 165, 0.03)),
                fault(
                        "torque 5 % low over 20 deg",
                        250, 10, made -> made.torqueOfTurn = deg -> hump(deg, 240, 260, -0.05)),
                fault(
                        "stick-slip of 8 % over 40 deg",
                        200,
                        25,
                        made -> made.torqueOfTurn =
                                deg -> deg > 180 && deg < 220 ? 1 + 0.08 * (deg % 12 / 12 - 0.5) : 1),
                fault(
                        "a soft step of 12 deg that loses no torque later",
                        100,
                        20,
                        made -> made.slipOfTurn = deg -> deg > 90 && deg < 110 ? 12 : 0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void is_found_where_it_is(String name, double turnDeg, double withinDeg, Consumer<MadeCurve> fault) {
        for (int i = 0; i < TRIES; i++) {
            var made = good.with(fault);
            var departure = envelope.departure(GoodCurves.shape(made.make())).orThrow();
            double atDeg = made.snugDeg() - made.originDeg() + turnDeg;
            assertTrue(departure.leaves(), () -> name + ": " + departure);
            assertEquals(atDeg, departure.atDeg(), withinDeg, () -> name + ": " + departure);
            assertTrue(departure.fromDeg() <= departure.atDeg() && departure.atDeg() <= departure.toDeg());
            assertEquals(Zone.ELASTIC, departure.zone());
        }
    }

    @Test
    void the_greater_the_fault_the_greater_the_distance() {
        double before = 0;
        for (double size : new double[] {0.01, 0.02, 0.04, 0.08}) {
            var made = new GoodCurves(5).with(one -> one.torqueOfTurn = deg -> hump(deg, 135, 165, size));
            double distance =
                    envelope.departure(GoodCurves.shape(made.make())).orThrow().distance();
            assertTrue(distance > before, size + ": " + distance);
            before = distance;
        }
    }

    @Test
    void the_excess_is_the_torque_that_was_added() {
        var made = good.with(one -> one.torqueOfTurn = deg -> hump(deg, 135, 165, 0.03));
        var departure = envelope.departure(GoodCurves.shape(made.make())).orThrow();
        double torqueNm = made.clean(made.originDeg() + departure.atDeg());
        assertEquals(0.03 * torqueNm, departure.excessNm(), 0.008 * torqueNm);
    }

    @Test
    void a_bolt_that_yields_early_departs_past_its_onset() {
        var made = good.with(one -> one.kneeDeg = 330);
        var departure = envelope.departure(GoodCurves.shape(made.make())).orThrow();
        assertTrue(departure.leaves());
        assertTrue(departure.zone() == Zone.PAST_ONSET || departure.zone() == Zone.END, departure.toString());
        assertTrue(departure.excessNm() < 0);
        assertEquals(330, departure.fromDeg(), 40);
    }

    @Test
    void parts_that_draw_together_late_depart_in_the_snug_stage() {
        var made = good.with(one -> one.seatingDeg = 110);
        var departure = envelope.departure(GoodCurves.shape(made.make())).orThrow();
        assertTrue(departure.leaves());
        assertTrue(departure.zone() == Zone.SNUG || departure.zone() == Zone.RUN_DOWN, departure.toString());
    }

    @Test
    void more_friction_alone_is_no_departure() {
        var made = good.with(one -> one.rateNmPerDeg = 0.16 * 1.15);
        assertFalse(envelope.departure(GoodCurves.shape(made.make())).orThrow().leaves());
    }

    private static double hump(double deg, double from, double to, double share) {
        return deg > from && deg < to ? 1 + share * Math.sin(Math.PI * (deg - from) / (to - from)) : 1;
    }

    private static Arguments fault(String name, double turnDeg, double withinDeg, Consumer<MadeCurve> fault) {
        return Arguments.of(name, turnDeg, withinDeg, fault);
    }
}
