package org.tautlog.accuracy;

import java.util.Locale;
import java.util.SplittableRandom;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.PhysicalBench;
import org.tautlog.signature.MadeCurve;

/** Two sources of curves with known features that share no code: physics of bolt and tool, and closed formulas. */
enum Generator {
    /** The simulated line's bolt and tool. */
    PHYSICS {
        @Override
        Known make(Conditions asked, long seed) {
            var random = new SplittableRandom(seed);
            var conditions = asked.everything ? anything(random) : asked;
            var bench = new PhysicalBench();
            bench.seed = seed;
            bench.noiseShare = conditions.noiseShare;
            bench.torqueStepNm = conditions.torqueStepNm;
            bench.angleStepDeg = conditions.angleStepDeg;
            bench.kiloHertz = conditions.kiloHertz;
            bench.stickShare = conditions.stickShare / 2;
            bench.pause = conditions.pause;
            bench.speedSwing = conditions.kiloHertz > 0 ? conditions.speedSwing : 0;
            bench.runOut = conditions.runOut;
            bench.prevailingNm = between(random, conditions.leastPrevailingNm, conditions.mostPrevailingNm);
            bench.seatingMm = between(random, conditions.leastSeatingDeg, conditions.mostSeatingDeg) * PITCH_MM / 360;
            bench.driveNmPerDeg = between(random, conditions.leastDriveNmPerDeg, conditions.mostDriveNmPerDeg);
            bench.threadMu = 0.11 + 0.004 * random.nextGaussian();
            bench.headMu = 0.11 + 0.004 * random.nextGaussian();
            bench.columnShare = 1 + 0.015 * random.nextGaussian();
            bench.onsetPastSnugDeg = between(random, conditions.leastOnsetDeg, conditions.mostOnsetDeg);
            bench.turnDeg = turn(random, conditions, bench.onsetPastSnugDeg);
            var known = bench.run();
            return new Known(
                    known.curve(),
                    known.snugDeg(),
                    known.rateNmPerDeg(),
                    known.originDeg(),
                    known.onsetDeg(),
                    known.onsetNm(),
                    known.stopDeg(),
                    known.loadKN());
        }
    },
    /** Closed formulas: a toe that rises as a parabola, a straight line, a gradient that falls as a logistic curve. */
    FORMULA {
        @Override
        Known make(Conditions asked, long seed) {
            var random = new SplittableRandom(seed);
            var conditions = asked.everything ? anything(random) : asked;
            var made = new MadeCurve();
            made.seed = seed;
            made.stages = seed % 2 == 0;
            made.pause = conditions.pause;
            made.torqueStepNm = conditions.torqueStepNm;
            made.stepDeg = conditions.angleStepDeg;
            made.kiloHertz = conditions.kiloHertz;
            made.speedSwing = conditions.speedSwing;
            made.prevailingNm = between(random, conditions.leastPrevailingNm, conditions.mostPrevailingNm);
            made.runOutShare = 0.03;
            made.seatingDeg = 2 * between(random, conditions.leastSeatingDeg, conditions.mostSeatingDeg);
            double driveNmPerDeg = between(random, conditions.leastDriveNmPerDeg, conditions.mostDriveNmPerDeg);
            var springs = Springs.drawn(new SplittableRandom(-seed));
            made.rateNmPerDeg = conditions.springs ? springs.rateNmPerDeg(driveNmPerDeg) : between(random, 0.12, 0.17);
            made.kneeWidthDeg = between(random, 3, 8);
            made.remainingRatio = between(random, 0.05, 0.2);
            made.spikeShare = between(random, 0.04, 0.2);
            double pastSnug = between(random, conditions.leastOnsetDeg, conditions.mostOnsetDeg);
            made.turnDeg = turn(random, conditions, pastSnug);
            made.kneeDeg = 0;
            double knee = made.onsetDeg(0.5) - made.originDeg();
            made.kneeDeg = 1e6;
            made.kneeDeg = made.snugDeg() + pastSnug - made.originDeg() - knee;
            double finalNm = made.clean(made.stopDeg());
            made.noiseNm = conditions.noiseShare * finalNm;
            made.springBackDeg = finalNm / driveNmPerDeg;
            double stick = conditions.stickShare;
            double period = between(random, 2, 6);
            made.torqueOfTurn = turn -> 1 + stick * (turn / period - Math.floor(turn / period) - 0.5);
            double onsetDeg = made.onsetDeg(0.5);
            return new Known(
                    made.make(),
                    made.snugDeg(),
                    made.rateNmPerDeg,
                    made.originDeg(),
                    onsetDeg,
                    made.clean(onsetDeg),
                    made.stopDeg(),
                    conditions.springs ? springs.loadKN(finalNm - made.prevailingNm) : Double.NaN);
        }
    };

    private static final double PITCH_MM =
            FenwaterEngine.joint().bolt().thread().pitchMm();

    /**
     * Makes one curve.
     *
     * @param asked the conditions
     * @param seed where all chance comes from; the same seed gives the same curve on any thread
     */
    abstract Known make(Conditions asked, long seed);

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    private static double between(SplittableRandom random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static double turn(SplittableRandom random, Conditions conditions, double onsetPastSnugDeg) {
        return onsetPastSnugDeg + between(random, conditions.leastPastDeg, conditions.mostPastDeg);
    }

    /** Somewhere in every range at once. */
    private static Conditions anything(SplittableRandom random) {
        return Conditions.with(c -> {
            c.noiseShare = Math.exp(between(random, Math.log(0.001), Math.log(0.02)));
            c.torqueStepNm = Math.exp(between(random, Math.log(0.01), Math.log(0.5)));
            c.angleStepDeg = Math.exp(between(random, Math.log(0.1), Math.log(2)));
            c.kiloHertz = random.nextBoolean() ? Math.exp(between(random, Math.log(0.1), Math.log(5))) : 0;
            c.stickShare = random.nextInt(4) == 0 ? between(random, 0, 0.1) : 0;
            c.leastPrevailingNm = 0;
            c.mostPrevailingNm = 15;
            c.leastSeatingDeg = 2;
            c.mostSeatingDeg = 60;
            c.leastDriveNmPerDeg = 6;
            c.mostDriveNmPerDeg = 60;
        });
    }
}
