package org.tautlog.accuracy;

import java.util.Optional;
import java.util.function.Consumer;
import org.tautlog.line.PhysicalBench.RunOut;

/** Under which conditions a cell of the study tightens. Everything is that of the aims unless changed. */
final class Conditions {
    /** Noise over the final torque. */
    double noiseShare = 0.005;

    double torqueStepNm = 0.01;
    double angleStepDeg = 0.5;
    /** Sampled by time where above 0. */
    double kiloHertz = 0;

    /** Swing of the speed about its mean, where sampled by time. */
    double speedSwing = 0.5;

    double stickShare = 0;
    double leastPrevailingNm = 1.4;
    double mostPrevailingNm = 1.8;
    /** Length of the soft toe, as turn. */
    double leastSeatingDeg = 8;

    double mostSeatingDeg = 12;
    double leastDriveNmPerDeg = 22;
    double mostDriveNmPerDeg = 28;
    double leastOnsetDeg = 40;
    double mostOnsetDeg = 400;
    /** How far the tool turns past the onset; below 0 where it stops before. */
    double leastPastDeg = 50;

    double mostPastDeg = 80;
    boolean pause = true;
    /** How the free turning runs out of true, in the physics. */
    RunOut runOut = RunOut.USUAL;
    /** Whether the torque rate of the formulas is that of {@link Springs}, so that the clamp load is known. */
    boolean springs = false;
    /** The generator that draws this alone; empty where both do. */
    Optional<Generator> only = Optional.empty();
    /** Whether every range is drawn from at once, tightening by tightening. */
    boolean everything = false;

    static Conditions with(Consumer<Conditions> change) {
        var conditions = new Conditions();
        change.accept(conditions);
        return conditions;
    }

    boolean drawnBy(Generator generator) {
        return only.isEmpty() || only.get() == generator;
    }
}
