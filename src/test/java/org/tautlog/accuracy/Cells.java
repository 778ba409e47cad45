package org.tautlog.accuracy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.tautlog.line.PhysicalBench.RunOut;

/** The cells of the study: the conditions of the aims, then each range by itself, then everything at once. */
final class Cells {
    static final String AIMS = "aims: 0.5 % noise, 0.5 deg";
    static final String NO_RUN_OUT = "aims, no run-out";
    static final String FADING = "aims, run-out fades under load";
    static final String THIRD = "aims, third swing of run-out";
    static final String WANDER = "aims, phase of run-out wanders";
    static final String SPRINGS = "aims, clamp load by springs";
    static final String NEVER = "onset never reached";

    static final Map<String, Conditions> ALL = all();

    private Cells() {}

    private static Map<String, Conditions> all() {
        var cells = new LinkedHashMap<String, Conditions>();
        put(cells, AIMS, c -> {});
        put(cells, NO_RUN_OUT, c -> {
            c.leastPrevailingNm = 0;
            c.mostPrevailingNm = 0;
        });
        runOut(cells, FADING, RunOut.FADES_UNDER_LOAD);
        runOut(cells, THIRD, RunOut.THIRD_SWING);
        runOut(cells, WANDER, RunOut.PHASE_WANDERS);
        put(cells, SPRINGS, c -> {
            c.springs = true;
            c.only = Optional.of(Generator.FORMULA);
        });
        put(cells, NEVER, c -> {
            c.leastOnsetDeg = 250;
            c.mostOnsetDeg = 450;
            c.leastPastDeg = -120;
            c.mostPastDeg = -40;
        });
        for (double noise : new double[] {0.1, 0.2, 1, 2}) {
            put(cells, "noise " + short1(noise) + " %", c -> c.noiseShare = noise / 100);
        }
        for (double step : new double[] {0.05, 0.1, 0.5}) {
            put(cells, "torque step " + short1(step) + " N·m", c -> c.torqueStepNm = step);
        }
        for (double step : new double[] {0.1, 0.25, 1, 2, 7, 14}) {
            put(cells, "angle step " + short1(step) + " deg", c -> c.angleStepDeg = step);
        }
        for (double rate : new double[] {0.1, 0.5, 1, 5}) {
            put(cells, "by time, " + short1(1000 * rate) + " Hz", c -> c.kiloHertz = rate);
        }
        for (double stick : new double[] {2, 5, 10}) {
            put(cells, "stick-slip " + short1(stick) + " %", c -> c.stickShare = stick / 100);
        }
        for (double prevailing : new double[] {5, 10, 15}) {
            put(cells, "prevailing " + short1(prevailing) + " N·m", c -> {
                c.leastPrevailingNm = prevailing;
                c.mostPrevailingNm = prevailing;
            });
        }
        for (double seating : new double[] {1, 30, 80}) {
            put(cells, "seating " + short1(seating) + " deg", c -> {
                c.leastSeatingDeg = seating;
                c.mostSeatingDeg = seating;
            });
        }
        for (double drive : new double[] {5, 10, 100}) {
            put(cells, "drive " + short1(drive) + " N·m/deg", c -> {
                c.leastDriveNmPerDeg = drive;
                c.mostDriveNmPerDeg = drive;
            });
        }
        put(cells, "no pause", c -> c.pause = false);
        onset(cells, 40, 80);
        onset(cells, 80, 160);
        onset(cells, 160, 300);
        onset(cells, 300, 400);
        put(cells, "stops 20 deg before to 20 past", c -> {
            c.leastPastDeg = -20;
            c.mostPastDeg = 20;
        });
        put(cells, "everything at once", c -> c.everything = true);
        return Collections.unmodifiableMap(cells);
    }

    private static void runOut(Map<String, Conditions> cells, String name, RunOut runOut) {
        put(cells, name, c -> {
            c.runOut = runOut;
            c.only = Optional.of(Generator.PHYSICS);
        });
    }

    private static void onset(Map<String, Conditions> cells, double low, double high) {
        put(cells, "onset " + short1(low) + " to " + short1(high) + " deg", c -> {
            c.leastOnsetDeg = low;
            c.mostOnsetDeg = high;
        });
    }

    private static void put(Map<String, Conditions> cells, String name, Consumer<Conditions> change) {
        cells.put(name, Conditions.with(change));
    }

    private static String short1(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
