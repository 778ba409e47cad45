package org.tautlog.accuracy;

import java.util.function.Consumer;

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
    /** Whether every range is drawn from at once, tightening by tightening. */
    boolean everything = false;

    static Conditions with(Consumer<Conditions> change) {
        var conditions = new Conditions();
        change.accept(conditions);
        return conditions;
    }

    boolean reachesOnset() {
        return leastPastDeg > 0;
    }

    boolean stopsShortOfOnset() {
        return mostPastDeg < 0;
    }
}
