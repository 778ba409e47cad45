package org.tautlog.line;

import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** The two stations of the line, four spindles each, and the pattern in which each tightens its bolts. */
enum Station {
    /** Tightens bolts 1 to 4, recorded by angle. */
    S40(1, 0, Sampling.By.ANGLE),
    /** Tightens bolts 5 to 8 one cycle later, recorded by time. */
    S50(5, 1, Sampling.By.TIME);

    /** How many spindles, and so bolts, each has. */
    static final int SPINDLES = 4;

    /** From the middle outwards, crosswise: common practice, so that the stack draws together evenly. */
    private static final int[] PATTERN = {1, 2, 0, 3};

    private final int firstBolt;
    private final int cyclesBehind;
    private final Sampling.By by;

    Station(int firstBolt, int cyclesBehind, Sampling.By by) {
        this.firstBolt = firstBolt;
        this.cyclesBehind = cyclesBehind;
        this.by = by;
    }

    /** How many cycles after the first station it gets an engine. */
    int cyclesBehind() {
        return cyclesBehind;
    }

    /** Index of the spindle that tightens next, from 0, for each step of the pattern. */
    int spindleAt(int step) {
        return PATTERN[step];
    }

    int bolt(int spindle) {
        return firstBolt + spindle;
    }

    List<Spindle> spindles(long seed) {
        var spindles = new Spindle[SPINDLES];
        for (int i = 0; i < SPINDLES; i++) {
            spindles[i] = spindle(i, Seeds.stream(seed, Seeds.Use.SPINDLE, bolt(i)));
        }
        return List.of(spindles);
    }

    private Spindle spindle(int index, UniformRandomProvider random) {
        var gauss = ZigguratSampler.NormalizedGaussian.of(random);
        return new Spindle(
                name(),
                Integer.toString(index + 1),
                1 + 0.004 * gauss.sample(),
                0.12 * gauss.sample(),
                0.08 + 0.05 * random.nextDouble(),
                22 + 6 * random.nextDouble(),
                Sampling.usual(by));
    }
}
