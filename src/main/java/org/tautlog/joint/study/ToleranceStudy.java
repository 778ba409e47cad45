package org.tautlog.joint.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.tautlog.joint.Require;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.warmup.HotStrength;
import org.tautlog.joint.warmup.Temperatures;
import org.tautlog.joint.warmup.WarmUp;

/**
 * A tolerance study to run: one tightening and warm-up, and how far each factor strays from it. The same study gives the same
 * result, draw by draw.
 *
 * @param nominal the tightening with nothing astray
 * @param temperatures of the first warm-up
 * @param torsionLeftShare share of the shank's torque that stays after tightening; 0 to 1
 * @param embeddingMm flattening before the warm-up, mm; at least 0
 * @param spreads how far each factor strays; factors left out do not
 * @param draws how many tightenings to draw; from 1,000 to 10,000,000
 * @param seed the seed to draw with
 * @param coverage the share of draws that each pair of proposed limits lets through; above 0.5, below 1
 */
public record ToleranceStudy(
        Tightening nominal,
        Temperatures temperatures,
        double torsionLeftShare,
        double embeddingMm,
        Map<Factor, Spread> spreads,
        int draws,
        long seed,
        double coverage) {
    /** How many tightenings are drawn unless stated otherwise. */
    public static final int USUAL_DRAWS = 100_000;

    /** Plus and minus three standard deviations of a normal distribution. Source: common practice. */
    public static final double USUAL_COVERAGE = 0.9973;

    /** The fewest tightenings that may be drawn. */
    public static final int LEAST_DRAWS = 1_000;

    /** The most tightenings that may be drawn. */
    public static final int MOST_DRAWS = 10_000_000;

    /** Coverage, a share, must lie above this. */
    public static final double LEAST_COVERAGE = 0.5;

    private static final double LEAST_PROBABILITY = 0x1.0p-53;

    /** Checks each value, and copies the map. */
    public ToleranceStudy {
        Require.present("nominal", nominal);
        Require.present("temperatures", temperatures);
        Require.within("torsionLeftShare", torsionLeftShare, 0, 1, "");
        Require.atLeast("embeddingMm", embeddingMm, 0, "mm");
        spreads = Map.copyOf(Require.present("spreads", spreads));
        Require.within("draws", draws, LEAST_DRAWS, MOST_DRAWS, "");
        Require.above("coverage", coverage, LEAST_COVERAGE, "");
        Require.within("coverage", coverage, LEAST_COVERAGE, Math.nextDown(1.0), "");
    }

    /**
     * A study of 100,000 draws with half the torsion left, no embedding and limits at plus and minus three deviations.
     *
     * @param nominal the tightening with nothing astray
     * @param temperatures of the first warm-up
     * @param spreads how far each factor strays
     * @param seed the seed to draw with
     * @return the study
     */
    public static ToleranceStudy of(
            Tightening nominal, Temperatures temperatures, Map<Factor, Spread> spreads, long seed) {
        return new ToleranceStudy(
                nominal, temperatures, WarmUp.USUAL_TORSION_LEFT_SHARE, 0, spreads, USUAL_DRAWS, seed, USUAL_COVERAGE);
    }

    /**
     * Draws all tightenings and looks at what they have in common.
     *
     * @return the finding
     * @throws IllegalArgumentException when a draw is no joint at all, such as friction below 0; the message says which
     *     draw and why
     */
    public StudyResult run() {
        var factors = spreads.keySet().stream()
                .filter(factor -> spread(factor).standardDeviation() > 0)
                .sorted()
                .toList();
        var sample = new Sample(factors, draws);
        var random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        for (int draw = 0; draw < draws; draw++) drawOne(sample, random, draw);
        return sum(sample);
    }

    private void drawOne(Sample sample, UniformRandomProvider random, int draw) {
        var astray = new EnumMap<Factor, Double>(Factor.class);
        for (int i = 0; i < sample.factors.size(); i++) {
            var factor = sample.factors.get(i);
            var probability = Math.max(LEAST_PROBABILITY, random.nextDouble());
            var standardised = spread(factor).standardised(probability);
            sample.probability[i][draw] = probability;
            sample.standardised[i][draw] = standardised;
            astray.put(factor, standardised * spread(factor).standardDeviation());
        }
        try {
            var drawn = Astray.tightening(nominal, astray);
            var curve = TighteningCurve.of(drawn);
            var end = curve.atEnd();
            var hot = Astray.temperatures(temperatures, astray);
            var warm = new WarmUp(
                            drawn.joint(),
                            hot,
                            HotStrength.ofBoltSteel(hot.boltC()),
                            torsionLeftShare,
                            embeddingMm,
                            drawn.torsionRule(),
                            drawn.knee())
                    .run(end);
            sample.keep(draw, drawn, curve, end, warm);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "draw " + draw + " is no sound joint: " + e.getMessage() + ". Narrow the spreads", e);
        }
    }

    private StudyResult sum(Sample sample) {
        var summaries = new EnumMap<Quantity, Summary>(Quantity.class);
        var drivers = new EnumMap<Quantity, List<Driver>>(Quantity.class);
        for (var quantity : Quantity.values()) {
            summaries.put(quantity, Summary.of(sample.of(quantity)));
            drivers.put(quantity, drivers(sample, quantity));
        }
        return new StudyResult(
                draws,
                seed,
                summaries,
                drivers,
                (double) sample.yieldedAtAssembly / draws,
                (double) sample.yieldedAtWarmUp / draws,
                scatterLeft(sample, summaries),
                window(sample));
    }

    private static List<Driver> drivers(Sample sample, Quantity quantity) {
        var y = sample.of(quantity);
        var drivers = new ArrayList<Driver>();
        for (int i = 0; i < sample.factors.size(); i++) {
            var effect = 0.0;
            for (int draw = 0; draw < y.length; draw++)
                effect += sample.standardised[i][draw] * (y[draw] - y[0]) / y.length;
            drivers.add(new Driver(sample.factors.get(i), FirstOrder.index(sample.probability[i], y), effect));
        }
        drivers.sort(Comparator.comparingDouble(Driver::varianceShare).reversed());
        return List.copyOf(drivers);
    }

    private ScatterLeft scatterLeft(Sample sample, Map<Quantity, Summary> summaries) {
        var clipped = (double) sample.yieldedAtWarmUp / draws;
        var room = sample.hotYieldSumN - sample.thermalSumN;
        return new ScatterLeft(
                ScatterLeft.Rule.of(clipped),
                clipped,
                variation(summaries, Quantity.FINAL_PRELOAD),
                variation(summaries, Quantity.COLD_PRELOAD),
                room > 0 ? sample.hotYieldSumN / room : Double.POSITIVE_INFINITY);
    }

    private static double variation(Map<Quantity, Summary> summaries, Quantity quantity) {
        var summary = summaries.get(quantity);
        return summary == null ? Double.NaN : summary.coefficientOfVariation();
    }

    private ProposedWindow window(Sample sample) {
        var limits = new EnumMap<Quantity, Limits>(Quantity.class);
        for (var quantity : Sample.WINDOWED) limits.put(quantity, limits(sample.of(quantity)));
        var within = 0;
        for (int draw = 0; draw < draws; draw++) {
            var all = true;
            for (var entry : limits.entrySet()) all &= entry.getValue().holds(sample.of(entry.getKey())[draw]);
            if (all) within++;
        }
        return new ProposedWindow(
                coverage,
                (double) within / draws,
                limits(sample.of(Quantity.SNUG_TORQUE)),
                limits(sample.of(Quantity.TURN)),
                limits(sample.of(Quantity.FINAL_TORQUE)),
                limits(sample.of(Quantity.TORQUE_RATE)),
                limits(sample.of(Quantity.ONSET_ANGLE)));
    }

    private Limits limits(double[] values) {
        var sorted = values.clone();
        Arrays.sort(sorted);
        var tail = (1 - coverage) / 2;
        return new Limits(Summary.quantile(sorted, tail), Summary.quantile(sorted, 1 - tail));
    }

    private Spread spread(Factor factor) {
        var spread = spreads.get(factor);
        return spread == null ? Spread.normal(0) : spread;
    }
}
