package org.tautlog.joint.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.rng.simple.RandomSource;
import org.tautlog.joint.Require;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.warmup.HotStrength;
import org.tautlog.joint.warmup.WarmUp;

/**
 * The curves of a study, angle by angle: where most drawn tightenings run, and some of them one by one through the warm-up.
 *
 * @param coverage the share of curves between low and high at each angle, half of the rest beyond either end
 * @param bands torque and clamp load at each angle, in rising order of angle
 * @param pairs some drawn bolts before and after their first warm-up
 */
public record Envelope(double coverage, List<Band> bands, List<Pair> pairs) {
    private static final double LEAST_PROBABILITY = 0x1.0p-53;
    /** The curves go on past the turn, to show where the yield zone lies. */
    private static final double FURTHER_SHARE = 0.3;

    /**
     * All curves at one angle.
     *
     * @param pastSnugDeg the head's angle past the snug point, deg
     * @param torqueNm torque, N·m
     * @param preloadN clamp load, N
     */
    public record Band(double pastSnugDeg, Range torqueNm, Range preloadN) {}

    /**
     * A range with its middle.
     *
     * @param low the lower end
     * @param median the middle
     * @param high the upper end
     */
    public record Range(double low, double median, double high) {}

    /**
     * One drawn bolt.
     *
     * @param tightenedN clamp load at the end of the turn, N
     * @param coldAfterN clamp load when cold again after the first warm-up, N
     */
    public record Pair(double tightenedN, double coldAfterN) {}

    /** Copies the lists. */
    public Envelope {
        bands = List.copyOf(bands);
        pairs = List.copyOf(pairs);
    }

    /**
     * Draws curves of a study.
     *
     * @param study the study; its own number of draws does not count here
     * @param draws how many curves to draw; from 100 to 100,000
     * @param steps how many angles to look at; from 2 to 1,000
     * @return the envelope
     * @throws IllegalArgumentException when a draw is no joint at all
     */
    public static Envelope of(ToleranceStudy study, int draws, int steps) {
        Require.within("draws", draws, 100, 100_000, "");
        Require.within("steps", steps, 2, 1_000, "");
        var random = RandomSource.XO_SHI_RO_256_PP.create(study.seed());
        var torqueNm = new double[steps + 1][draws];
        var preloadN = new double[steps + 1][draws];
        var pairs = new ArrayList<Pair>();
        double stepDeg = study.nominal().turnDeg() * (1 + FURTHER_SHARE) / steps;
        for (int draw = 0; draw < draws; draw++) {
            var astray = new EnumMap<Factor, Double>(Factor.class);
            for (var entry : new TreeMap<>(study.spreads()).entrySet()) {
                var spread = entry.getValue();
                astray.put(
                        entry.getKey(),
                        spread.standardDeviation()
                                * spread.standardised(Math.max(LEAST_PROBABILITY, random.nextDouble())));
            }
            var curve = TighteningCurve.of(Astray.tightening(study.nominal(), astray));
            for (int step = 0; step <= steps; step++) {
                preloadN[step][draw] = curve.preloadN(curve.snugAngleDeg() + step * stepDeg);
                torqueNm[step][draw] = curve.torqueNmAtPreload(preloadN[step][draw]);
            }
            pairs.add(pair(study, curve, astray));
        }
        double tail = (1 - study.coverage()) / 2;
        var bands = new ArrayList<Band>();
        for (int step = 0; step <= steps; step++) {
            bands.add(new Band(step * stepDeg, range(torqueNm[step], tail), range(preloadN[step], tail)));
        }
        return new Envelope(study.coverage(), bands, pairs);
    }

    private static Pair pair(ToleranceStudy study, TighteningCurve curve, Map<Factor, Double> astray) {
        var tightening = Astray.tightening(study.nominal(), astray);
        var hot = Astray.temperatures(study.temperatures(), astray);
        var end = curve.atEnd();
        var warm = new WarmUp(
                        tightening.joint(),
                        hot,
                        HotStrength.ofBoltSteel(hot.boltC()),
                        study.torsionLeftShare(),
                        study.embeddingMm(),
                        tightening.torsionRule(),
                        tightening.knee())
                .run(end);
        return new Pair(end.preloadN(), warm.coldAfterN());
    }

    private static Range range(double[] values, double tail) {
        Arrays.sort(values);
        return new Range(
                Summary.quantile(values, tail), Summary.quantile(values, 0.5), Summary.quantile(values, 1 - tail));
    }
}
