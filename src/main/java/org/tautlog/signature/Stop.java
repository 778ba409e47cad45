package org.tautlog.signature;

import org.tautlog.trace.Curve;

/**
 * Which samples count, and where the tool stopped: the first sample at the greatest angle. Samples after it run back or
 * stand still, as drive and bolt untwist. Where samples lie so far apart that the greatest angle is seen only with the
 * torque already gone, the last sample under load is the one before, and the tool stopped at that angle or past it.
 *
 * @param sample index of the last sample under load
 * @param angleDeg greatest angle, deg, on the recording's own axis
 * @param gapDeg turn past the greatest angle that can have gone unrecorded, deg: the longest of the last steps before
 *     it, 0 where the tool is seen to stand there
 * @param end how many samples count, from the first on: all, or the first copy of a recording that holds itself twice
 * @param duplicated whether the recording holds its samples twice
 * @param springBackDeg how far the angle runs back after the stop, deg
 */
record Stop(int sample, double angleDeg, double gapDeg, int end, boolean duplicated, double springBackDeg) {
    /** Angles closer to the greatest one than this are at the stop: less than any encoder in use resolves. */
    private static final double AT_STOP_DEG = 0.02;

    /** A single sample further off both neighbours than this is no angle of the tool. */
    private static final double WILD_DEG = 45;

    /** Finer than any encoder: recorded angles are decimals, and their differences must come out alike. */
    private static final double STEPS_PER_DEG = 1e6;

    private static final int LEAST_COPY = 20;
    private static final double LEAST_RETURN_DEG = 5;

    static Stop of(Curve curve) {
        int copyAt = secondCopy(curve);
        int end = copyAt > 0 ? copyAt : curve.size();
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < end; i++) {
            if (!wild(curve, i)) {
                greatest = Math.max(greatest, curve.angleDeg(i));
            }
        }
        int sample = 0;
        while (sample < end - 1 && (curve.angleDeg(sample) < greatest - AT_STOP_DEG || wild(curve, sample))) {
            sample++;
        }
        double least = curve.angleDeg(sample);
        for (int i = sample; i < end; i++) {
            least = wild(curve, i) ? least : Math.min(least, curve.angleDeg(i));
        }
        boolean twice = copyAt > 0 || everyRowTwice(curve);
        double stopDeg = curve.angleDeg(sample);
        double gap = stands(curve, sample, end) ? 0 : Steps.longestBefore(curve, sample);
        return new Stop(
                letGo(curve, sample, end) ? sample - 1 : sample, stopDeg, gap, end, twice, recorded(stopDeg - least));
    }

    private static double recorded(double differenceDeg) {
        return Math.rint(differenceDeg * STEPS_PER_DEG) / STEPS_PER_DEG;
    }

    /** Whether the sample after one is at the same angle and still under its torque. */
    private static boolean stands(Curve curve, int sample, int end) {
        return sample + 1 < end
                && Math.abs(curve.angleDeg(sample + 1) - curve.angleDeg(sample)) <= AT_STOP_DEG
                && !LetGo.between(curve.torqueNm(sample), curve.torqueNm(sample + 1));
    }

    /** Whether the drive had let go by the sample at the greatest angle, and the torque does not come back. */
    private static boolean letGo(Curve curve, int sample, int end) {
        if (sample == 0) {
            return false;
        }
        for (int i = sample; i < end; i++) {
            if (!LetGo.between(curve.torqueNm(sample - 1), curve.torqueNm(i))) {
                return false;
            }
        }
        return true;
    }

    /** Whether one sample's angle leaps away and the next is back. */
    static boolean wild(Curve curve, int i) {
        if (i == 0 || i == curve.size() - 1) {
            return false;
        }
        double before = curve.angleDeg(i - 1);
        double leap = Math.abs(curve.angleDeg(i) - before);
        return leap > WILD_DEG && Math.abs(curve.angleDeg(i + 1) - before) < leap / 4;
    }

    /** Index from which the recording repeats its beginning to its end, or 0. */
    private static int secondCopy(Curve curve) {
        int n = curve.size();
        for (int start = LEAST_COPY; start <= n - LEAST_COPY; start++) {
            if (curve.angleDeg(start) < curve.angleDeg(start - 1) - LEAST_RETURN_DEG && repeats(curve, start)) {
                return start;
            }
        }
        return 0;
    }

    private static boolean repeats(Curve curve, int start) {
        if (2 * start < curve.size() * 9 / 10) {
            return false;
        }
        for (int i = start; i < curve.size(); i++) {
            if (!same(curve, i, i - start)) {
                return false;
            }
        }
        return true;
    }

    /** Rows doubled one by one; a drive that stands still repeats a row too, but not pair after pair. */
    private static boolean everyRowTwice(Curve curve) {
        int n = curve.size();
        if (n < 2 * LEAST_COPY) {
            return false;
        }
        int pairs = 0;
        int changes = 0;
        for (int i = 0; i + 1 < n; i += 2) {
            if (same(curve, i, i + 1) && (!curve.hasTime() || curve.timeS(i) == curve.timeS(i + 1))) {
                pairs++;
            }
            if (i + 2 < n && !same(curve, i, i + 2)) {
                changes++;
            }
        }
        return pairs == n / 2 && changes > pairs / 2;
    }

    private static boolean same(Curve curve, int i, int j) {
        return curve.angleDeg(i) == curve.angleDeg(j) && curve.torqueNm(i) == curve.torqueNm(j);
    }
}
