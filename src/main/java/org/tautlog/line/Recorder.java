package org.tautlog.line;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.SharedStateContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.tautlog.trace.Curve;

/** Takes the samples that a tool's sensors show, at the recorder's own rate and resolution. */
final class Recorder {
    private static final double ANGLES_PER_DEG = 10;
    private static final double LEAST_TIMES_PER_S = 1000;

    private final Spindle spindle;
    private final SharedStateContinuousSampler noise;
    private final boolean byTime;
    private final double step;
    private final double torquesPerNm;
    private final double timesPerS;
    private double[] angleDeg = new double[2048];
    private double[] torqueNm = new double[2048];
    private double[] timeS = new double[2048];
    private int[] stage = new int[2048];
    private int size;
    private double lastAngleDeg;
    private double lastTorqueNm;
    private long lastMark;

    Recorder(Spindle spindle, UniformRandomProvider random) {
        this.spindle = spindle;
        byTime = spindle.sampling().by() == Sampling.By.TIME;
        step = spindle.sampling().step();
        torquesPerNm = 1 / spindle.sampling().torqueStepNm();
        timesPerS = Math.max(LEAST_TIMES_PER_S, 1 / step);
        noise = ZigguratSampler.NormalizedGaussian.of(random);
        lastMark = Long.MIN_VALUE;
    }

    /** Shows the recorder where the tool is; it takes as many samples as fall between the last call and this one. */
    void see(double seconds, double toolDeg, double trueNm, int stageNumber) {
        if (byTime) {
            long mark = Math.round(seconds / step - 0.25);
            if (mark != lastMark) {
                lastMark = mark;
                keep(seconds, toolDeg, trueNm, stageNumber);
            }
        } else if (lastMark == Long.MIN_VALUE) {
            lastMark = 0;
            keep(seconds, toolDeg, trueNm, stageNumber);
        } else {
            keepCrossed(seconds, toolDeg, trueNm, stageNumber);
        }
        lastAngleDeg = toolDeg;
        lastTorqueNm = trueNm;
    }

    private void keepCrossed(double seconds, double toolDeg, double trueNm, int stageNumber) {
        while (toolDeg >= (lastMark + 1) * step) {
            keepAtMark(++lastMark, seconds, toolDeg, trueNm, stageNumber);
        }
        while (toolDeg <= (lastMark - 1) * step) {
            keepAtMark(--lastMark, seconds, toolDeg, trueNm, stageNumber);
        }
    }

    private void keepAtMark(long mark, double seconds, double toolDeg, double trueNm, int stageNumber) {
        double markDeg = mark * step;
        double share = (markDeg - lastAngleDeg) / (toolDeg - lastAngleDeg);
        keep(seconds, markDeg, lastTorqueNm + share * (trueNm - lastTorqueNm), stageNumber);
    }

    private void keep(double seconds, double toolDeg, double trueNm, int stageNumber) {
        if (size == angleDeg.length) {
            angleDeg = Arrays.copyOf(angleDeg, 2 * size);
            torqueNm = Arrays.copyOf(torqueNm, 2 * size);
            timeS = Arrays.copyOf(timeS, 2 * size);
            stage = Arrays.copyOf(stage, 2 * size);
        }
        angleDeg[size] = rounded(toolDeg, ANGLES_PER_DEG);
        torqueNm[size] = rounded(spindle.shownNm(trueNm) + spindle.noiseNm() * noise.sample(), torquesPerNm);
        timeS[size] = rounded(seconds, timesPerS);
        stage[size] = stageNumber;
        size++;
    }

    /** A recorder that goes by angle closes with one sample more, where the tool came to rest. */
    void close(double seconds, double toolDeg, double trueNm, int stageNumber) {
        if (!byTime) {
            keep(seconds, toolDeg, trueNm, stageNumber);
        }
    }

    /** What was recorded; times only where the recorder goes by time. */
    Curve curve() {
        var curve = Curve.of(Arrays.copyOf(angleDeg, size), Arrays.copyOf(torqueNm, size))
                .withStages(Arrays.copyOf(stage, size));
        return byTime ? curve.withTimeS(Arrays.copyOf(timeS, size)) : curve;
    }

    /** Rounded to so many parts of one, never to minus zero. */
    private static double rounded(double value, double partsOfOne) {
        return Math.round(value * partsOfOne) / partsOfOne;
    }
}
