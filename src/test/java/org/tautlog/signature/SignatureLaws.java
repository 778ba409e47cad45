package org.tautlog.signature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.trace.Curve;

/** What must hold whatever the curve. */
class SignatureLaws {
    private static final TighteningMethod METHOD = new TighteningMethod(20, 360);

    @Provide
    Arbitrary<MadeCurve> curves() {
        return Combinators.combine(
                        Arbitraries.longs().between(1, 1_000_000),
                        Arbitraries.doubles().between(0.1, 0.25),
                        Arbitraries.doubles().between(300, 500),
                        Arbitraries.doubles().between(0.05, 0.3),
                        Arbitraries.of(0.0, 1.0),
                        Arbitraries.of(true, false))
                .as((seed, rate, knee, remains, khz, stages) -> {
                    var made = new MadeCurve();
                    made.seed = seed;
                    made.rateNmPerDeg = rate;
                    made.kneeDeg = knee;
                    made.remainingRatio = remains;
                    made.kiloHertz = khz;
                    made.stages = stages;
                    made.noiseShare = 0.003;
                    return made;
                });
    }

    private static Signature read(Curve curve) {
        return SignatureReader.read(curve, METHOD, ReadingRule.withDefaults());
    }

    @Property(tries = 40)
    void scaling_all_torques_scales_rate_and_torques_and_leaves_angles(
            @ForAll("curves") MadeCurve made, @ForAll @DoubleRange(min = 0.2, max = 5) double factor) {
        var plain = AccuracyTest.read(made);
        made.torqueFactor = factor;
        var scaled = AccuracyTest.read(made);
        same(plain.elastic().torqueRateNmPerDeg(), scaled.elastic().torqueRateNmPerDeg(), factor, 0);
        same(plain.end().torqueNm(), scaled.end().torqueNm(), factor, 0);
        same(plain.prevailingTorqueNm(), scaled.prevailingTorqueNm(), factor, 0);
        same(plain.onset().angleDeg(), scaled.onset().angleDeg(), 1, 0);
        same(plain.snug().angleDeg(), scaled.snug().angleDeg(), 1, 0);
        same(plain.onset().minGradientRatio(), scaled.onset().minGradientRatio(), 1, 0);
    }

    /** Angles in whole steps of 1/1024 deg, so that the shift is exact and no sample changes its cell by rounding. */
    @Property(tries = 40)
    void shifting_the_angle_axis_shifts_angles_and_leaves_turn_and_rate(
            @ForAll("curves") MadeCurve made, @ForAll @IntRange(min = -40, max = 40) int eighthTurns) {
        double shift = 45.0 * eighthTurns;
        var curve = made.make();
        var stepped = Arrays.stream(curve.anglesDeg())
                .map(deg -> Math.rint(deg * 1024) / 1024)
                .toArray();
        var plain = read(withAngles(curve, stepped));
        var shifted = read(
                withAngles(curve, Arrays.stream(stepped).map(deg -> deg + shift).toArray()));
        same(plain.snug().angleDeg(), shifted.snug().angleDeg(), 1, shift);
        same(plain.elastic().originDeg(), shifted.elastic().originDeg(), 1, shift);
        same(plain.onset().angleDeg(), shifted.onset().angleDeg(), 1, shift);
        same(plain.end().turnDeg(), shifted.end().turnDeg(), 1, 0);
        same(plain.elastic().torqueRateNmPerDeg(), shifted.elastic().torqueRateNmPerDeg(), 1, 0);
    }

    @Property(tries = 30)
    void sampling_faster_in_time_says_the_same(
            @ForAll("curves") MadeCurve made, @ForAll @IntRange(min = 2, max = 4) int times) {
        made.kiloHertz = 1;
        made.noiseShare = 0;
        var slow = read(made.make());
        made.kiloHertz = times;
        var fast = read(made.make());
        assertEquals(slow.snug().angleDeg().number(), fast.snug().angleDeg().number(), 0.3);
        assertEquals(slow.end().turnDeg().number(), fast.end().turnDeg().number(), 0.3);
        assertEquals(
                1,
                fast.elastic().torqueRateNmPerDeg().number()
                        / slow.elastic().torqueRateNmPerDeg().number(),
                0.002);
    }

    @Property(tries = 40)
    void samples_of_a_drive_that_stands_still_change_nothing(
            @ForAll("curves") MadeCurve made,
            @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0.01, max = 0.98) Double> places) {
        made.stages = false;
        made.kiloHertz = 0;
        var curve = made.make();
        var plain = read(curve);
        var stood = read(stand(curve, places, 40));
        assertEquals(plain.snug(), stood.snug());
        assertEquals(plain.elastic(), stood.elastic());
        assertEquals(plain.onset(), stood.onset());
        assertEquals(plain.end(), stood.end());
    }

    /** Without times nothing says that such a sample was measured again. */
    @Property(tries = 40)
    void samples_written_twice_vouch_for_no_spike_of_the_snug_torque(@ForAll("curves") MadeCurve made) {
        made.stages = false;
        made.kiloHertz = 0;
        var curve = made.make();
        var everywhere = IntStream.range(0, curve.size())
                .mapToObj(i -> (i + 0.5) / curve.size())
                .toList();
        assertEquals(
                read(curve).snug().torqueNm(),
                read(stand(curve, everywhere, 2)).snug().torqueNm());
    }

    @Property(tries = 200)
    void any_numbers_at_all_are_read_without_failing(@ForAll @Size(min = 1, max = 60) double[] numbers) {
        var angle = new double[numbers.length];
        for (int i = 0; i < angle.length; i++) {
            angle[i] = numbers[(i * 7 + 3) % numbers.length];
        }
        assertEquals(numbers.length, read(Curve.of(angle, numbers)).samples());
    }

    @Property(tries = 200)
    void any_angles_and_torques_of_a_tool_are_read_without_failing(
            @ForAll @Size(min = 1, max = 80) List<@DoubleRange(min = -100, max = 800) Double> angles,
            @ForAll @DoubleRange(min = -50, max = 200) double torque) {
        var angle = angles.stream().mapToDouble(Double::doubleValue).toArray();
        var torques = IntStream.range(0, angle.length)
                .mapToDouble(i -> torque * Math.sin(i * torque))
                .toArray();
        var risen = Arrays.stream(angle).sorted().toArray();
        assertEquals(angle.length, read(Curve.of(angle, torques)).samples());
        assertEquals(angle.length, read(Curve.of(risen, torques)).samples());
    }

    /** A scratch full of anything else, as the curve before may have left it. */
    @Property(tries = 40)
    void what_lies_in_the_arrays_worked_in_shows_in_no_signature(
            @ForAll("curves") MadeCurve made, @ForAll double left, @ForAll @IntRange(min = 1, max = 4000) int samples) {
        var curve = made.make();
        var part = MadeCurve.cut(curve, Math.min(samples, curve.size()));
        var scratch = new Scratch();
        for (int i = 0; i < 40; i++) {
            Arrays.fill(scratch.doubles(5 * samples), left);
        }
        assertEquals(read(part), SignatureReader.read(part, METHOD, ReadingRule.withDefaults(), scratch));
        assertEquals(read(curve), SignatureReader.read(curve, METHOD, ReadingRule.withDefaults(), scratch));
        assertEquals(read(part), SignatureReader.read(part, METHOD, ReadingRule.withDefaults(), scratch));
    }

    private static Curve withAngles(Curve curve, double[] angleDeg) {
        var moved = Curve.of(angleDeg, curve.torquesNm());
        return curve.hasStages()
                ? moved.withStages(
                        IntStream.range(0, curve.size()).map(curve::stage).toArray())
                : moved;
    }

    private static Curve stand(Curve curve, List<Double> places, int times) {
        var angle = new ArrayList<Double>();
        var torque = new ArrayList<Double>();
        for (int i = 0; i < curve.size(); i++) {
            int sample = i;
            boolean stands = places.stream().anyMatch(place -> (int) (place * curve.size()) == sample);
            for (int k = 0; k < (stands ? times : 1); k++) {
                angle.add(curve.angleDeg(i));
                torque.add(curve.torqueNm(i));
            }
        }
        return Curve.of(
                angle.stream().mapToDouble(Double::doubleValue).toArray(),
                torque.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static void same(Feature plain, Feature other, double factor, double shift) {
        assertEquals(plain.isFound(), other.isFound(), plain.whyMissing() + other.whyMissing());
        double expected = plain.number() * factor + (plain.isFound() ? shift : 0);
        assertEquals(expected, other.number(), 1e-6 * Math.max(1, Math.abs(expected)));
        assertTrue(Double.isFinite(other.number()));
    }
}
