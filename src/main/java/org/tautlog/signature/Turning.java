package org.tautlog.signature;

import java.util.Arrays;
import java.util.List;

/**
 * The samples at which the tool turned on: each further than every one before it, up to the stop. What the drive does
 * while it stands still, runs back or loads up again is told apart by its role.
 */
final class Turning {
    /** What a sample's torque says. */
    enum Role {
        /** The bolt turns under the torque shown. */
        TURNS,
        /** The drive loads up again after a pause: not the bolt's torque. */
        RELOADS,
        /** The bolt breaks loose after a pause: static friction. */
        RESTARTS,
        /** The torque fell while turning and has not come back yet. */
        LOST
    }

    /**
     * A sudden fall of torque while turning that came back.
     *
     * @param fromDeg angle before the fall, deg
     * @param toDeg angle where the torque was back, deg
     * @param fromNm torque before the fall, N·m
     * @param toNm torque where it was back, N·m
     * @param leastNm least torque between, N·m
     */
    record Loss(double fromDeg, double toDeg, double fromNm, double toNm, double leastNm) {}

    /**
     * A stop under load from which the tool went on.
     *
     * @param sample index of the last sample before it
     * @param angleDeg angle of the stop, deg
     */
    record Pause(int sample, double angleDeg) {}

    private final double[] angleDeg;
    private final double[] torqueNm;
    private final Role[] role;
    private final int size;
    private final List<Pause> pauses;
    private final List<Loss> losses;
    private final int backSteps;
    private final double jumpDeg;

    Turning(
            double[] angleDeg,
            double[] torqueNm,
            Role[] role,
            int size,
            List<Pause> pauses,
            List<Loss> losses,
            int backSteps,
            double jumpDeg) {
        this.angleDeg = angleDeg;
        this.torqueNm = torqueNm;
        this.role = role;
        this.size = size;
        this.pauses = pauses;
        this.losses = losses;
        this.backSteps = backSteps;
        this.jumpDeg = jumpDeg;
    }

    int size() {
        return size;
    }

    double angleDeg(int i) {
        return angleDeg[i];
    }

    double torqueNm(int i) {
        return torqueNm[i];
    }

    Role role(int i) {
        return role[i];
    }

    List<Pause> pauses() {
        return pauses;
    }

    List<Loss> losses() {
        return losses;
    }

    int backSteps() {
        return backSteps;
    }

    double jumpDeg() {
        return jumpDeg;
    }

    /** Index of the first sample at or past an angle, or the size. */
    int firstFrom(double deg) {
        int place = Arrays.binarySearch(angleDeg, 0, size, deg);
        return place >= 0 ? place : -place - 1;
    }

    /** Means of the turning samples over at least {@code leastDeg}, so that slow turning weighs no more than fast. */
    Cells cells(double leastDeg, Scratch scratch) {
        var x = scratch.doubles(size);
        var y = scratch.doubles(size);
        int cells = 0;
        int i = 0;
        while (i < size) {
            if (role[i] != Role.TURNS) {
                i++;
                continue;
            }
            double start = angleDeg[i];
            double sumX = 0;
            double sumY = 0;
            int n = 0;
            do {
                sumX += angleDeg[i] - start;
                sumY += torqueNm[i];
                n++;
                i++;
            } while (i < size && role[i] == Role.TURNS && angleDeg[i] < start + leastDeg);
            x[cells] = start + sumX / n;
            y[cells] = sumY / n;
            cells++;
        }
        return new Cells(x, y, cells, scratch);
    }

    /** Robust noise of one sample's torque. */
    double noiseNm(int from) {
        return Cells.noiseNm(angleDeg, torqueNm, Math.min(from, Math.max(0, size - 12)), size);
    }
}
