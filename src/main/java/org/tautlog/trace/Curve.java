package org.tautlog.trace;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The samples of one tightening in recording order: angle and torque, and where the export has them time and stage.
 * Never altered after it was made; angles keep the recording's own axis, back-steps and all.
 */
public final class Curve {
    private final double[] angleDeg;
    private final double[] torqueNm;
    private final double @Nullable [] timeS;
    private final int @Nullable [] stage;

    private Curve(double[] angleDeg, double[] torqueNm, double @Nullable [] timeS, int @Nullable [] stage) {
        this.angleDeg = angleDeg;
        this.torqueNm = torqueNm;
        this.timeS = timeS;
        this.stage = stage;
    }

    /**
     * A curve of angle and torque alone.
     *
     * @param angleDeg angle of each sample, deg, finite; turning the bolt tight counts up
     * @param torqueNm torque of each sample, N·m, finite; tightening torque is positive
     * @return the curve, holding copies
     * @throws IllegalArgumentException where lengths differ, a value is not finite, or there is no sample
     */
    public static Curve of(double[] angleDeg, double[] torqueNm) {
        if (angleDeg.length == 0) {
            throw new IllegalArgumentException("a curve needs at least one sample");
        }
        checkSame("torqueNm", torqueNm.length, angleDeg.length);
        checkFinite("angleDeg", angleDeg);
        checkFinite("torqueNm", torqueNm);
        return new Curve(angleDeg.clone(), torqueNm.clone(), null, null);
    }

    /**
     * A curve of the first samples of some arrays.
     *
     * @param size how many samples, at least 1
     * @param angleDeg angle of each sample, deg, finite; turning the bolt tight counts up
     * @param torqueNm torque of each sample, N·m, finite; tightening torque is positive
     * @param timeS time of each sample, s, finite; null where there are none
     * @param stage stage of each sample, normally 1 for snug and 2 for turn; null where there are none
     * @return the curve, holding copies
     * @throws IllegalArgumentException where an array is shorter, a value is not finite, or there is no sample
     */
    public static Curve of(
            int size, double[] angleDeg, double[] torqueNm, double @Nullable [] timeS, int @Nullable [] stage) {
        if (size < 1) {
            throw new IllegalArgumentException("a curve needs at least one sample");
        }
        return new Curve(
                first(size, "angleDeg", angleDeg),
                first(size, "torqueNm", torqueNm),
                timeS == null ? null : first(size, "timeS", timeS),
                stage == null ? null : Arrays.copyOf(stage, size));
    }

    private static double[] first(int size, String name, double[] values) {
        if (values.length < size) {
            throw new IllegalArgumentException(name + " has " + values.length + " values; " + size + " are needed");
        }
        var first = Arrays.copyOf(values, size);
        checkFinite(name, first);
        return first;
    }

    /**
     * The same curve with a time for each sample.
     *
     * @param seconds time of each sample, s, finite; need not rise everywhere
     * @return the curve with times
     * @throws IllegalArgumentException where the length differs or a value is not finite
     */
    public Curve withTimeS(double[] seconds) {
        checkSame("timeS", seconds.length, angleDeg.length);
        checkFinite("timeS", seconds);
        return new Curve(angleDeg, torqueNm, seconds.clone(), stage);
    }

    /**
     * The same curve with the stage number of each sample, as the export marks them.
     *
     * @param numbers stage of each sample, normally 1 for snug and 2 for turn
     * @return the curve with stages
     * @throws IllegalArgumentException where the length differs
     */
    public Curve withStages(int[] numbers) {
        checkSame("stage", numbers.length, angleDeg.length);
        return new Curve(angleDeg, torqueNm, timeS, numbers.clone());
    }

    /** {@return how many samples there are, at least 1} */
    public int size() {
        return angleDeg.length;
    }

    /**
     * The angle of one sample.
     *
     * @param i index from 0
     * @return angle, deg, on the recording's own axis
     */
    public double angleDeg(int i) {
        return angleDeg[i];
    }

    /**
     * The torque of one sample.
     *
     * @param i index from 0
     * @return torque, N·m
     */
    public double torqueNm(int i) {
        return torqueNm[i];
    }

    /** {@return whether the samples carry times} */
    public boolean hasTime() {
        return timeS != null;
    }

    /**
     * The time of one sample.
     *
     * @param i index from 0
     * @return time, s
     * @throws IllegalStateException where the curve carries no times
     */
    public double timeS(int i) {
        if (timeS == null) {
            throw new IllegalStateException("this curve carries no times; ask hasTime() first");
        }
        return timeS[i];
    }

    /** {@return whether the samples carry stage numbers} */
    public boolean hasStages() {
        return stage != null;
    }

    /**
     * The stage number of one sample.
     *
     * @param i index from 0
     * @return the export's stage number
     * @throws IllegalStateException where the curve carries no stages
     */
    public int stage(int i) {
        if (stage == null) {
            throw new IllegalStateException("this curve carries no stages; ask hasStages() first");
        }
        return stage[i];
    }

    /** {@return a copy of all angles, deg} */
    public double[] anglesDeg() {
        return angleDeg.clone();
    }

    /** {@return a copy of all torques, N·m} */
    public double[] torquesNm() {
        return torqueNm.clone();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Curve that
                && Arrays.equals(angleDeg, that.angleDeg)
                && Arrays.equals(torqueNm, that.torqueNm)
                && Arrays.equals(timeS, that.timeS)
                && Arrays.equals(stage, that.stage);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(angleDeg) + Arrays.hashCode(torqueNm);
    }

    @Override
    public String toString() {
        return "Curve of " + size() + " samples";
    }

    private static void checkSame(String name, int length, int expected) {
        if (length != expected) {
            throw new IllegalArgumentException(
                    name + " has " + length + " values; the angles have " + expected + ", one each is needed");
        }
    }

    private static void checkFinite(String name, double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException(
                        name + " of sample " + (i + 1) + " is " + values[i] + "; a finite number is needed");
            }
        }
    }
}
