package org.tautlog.review.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.signature.MadeCurve;
import org.tautlog.signature.SignatureReader;
import org.tautlog.trace.Curve;

/**
 * What must hold of a departure whatever the curve. The reader of the elastic line bins angles and so answers a shifted curve
 * with a rate that differs in the fourth digit: hence the tolerances.
 */
class ShapeLaws {
    private static final double STEP_DEG = 5;

    private final Envelope envelope = new GoodCurves(3).envelope(30);

    @Property(tries = 30)
    void where_the_recording_starts_to_count_changes_nothing(
            @ForAll @IntRange(min = 1, max = 100_000) int seed,
            @ForAll @DoubleRange(min = -5000, max = 5000) double shiftDeg) {
        var curve = faulty(seed).make();
        var plain = envelope.departure(GoodCurves.shape(curve)).orThrow();
        var moved = envelope.departure(GoodCurves.shape(moved(curve, shiftDeg))).orThrow();
        same(plain, moved, 1);
    }

    @Property(tries = 30)
    void another_unit_of_torque_scales_the_excess_and_nothing_else(
            @ForAll @IntRange(min = 1, max = 100_000) int seed,
            @ForAll @DoubleRange(min = 0.3, max = 3) double factor) {
        var made = faulty(seed);
        var plain = envelope.departure(GoodCurves.shape(made.make())).orThrow();
        made.torqueFactor = factor;
        var method = new TighteningMethod(GoodCurves.METHOD.snugTorqueNm() * factor, GoodCurves.METHOD.turnDeg());
        var curve = made.make();
        var signature = SignatureReader.read(curve, method, ReadingRule.withDefaults());
        var scaled =
                envelope.departure(Shape.of(curve, signature, method).orThrow()).orThrow();
        same(plain, scaled, factor);
    }

    private static MadeCurve faulty(int seed) {
        return new GoodCurves(seed).with(made -> made.torqueOfTurn = deg -> deg > 100 && deg < 130 ? 1.04 : 1);
    }

    private static Curve moved(Curve curve, double shiftDeg) {
        var angles = curve.anglesDeg();
        for (int i = 0; i < angles.length; i++) {
            angles[i] += shiftDeg;
        }
        var stages = new int[curve.size()];
        for (int i = 0; i < stages.length; i++) {
            stages[i] = curve.stage(i);
        }
        return Curve.of(angles, curve.torquesNm()).withStages(stages);
    }

    private static void same(Departure plain, Departure other, double factor) {
        assertEquals(plain.distance(), other.distance(), 0.02 * plain.distance());
        assertEquals(plain.atDeg(), other.atDeg(), STEP_DEG);
        assertEquals(plain.fromDeg(), other.fromDeg(), STEP_DEG);
        assertEquals(plain.toDeg(), other.toDeg(), STEP_DEG);
        assertEquals(plain.zone(), other.zone());
        assertEquals(plain.excessNm() * factor, other.excessNm(), 0.02 * Math.abs(plain.excessNm() * factor));
    }
}
