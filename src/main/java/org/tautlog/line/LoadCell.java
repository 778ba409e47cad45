package org.tautlog.line;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.tautlog.trace.MeasuredClampLoad.Point;

/**
 * A load cell under the head, read while the bolt is turned past the snug point. It is the laboratory's; the line has none.
 */
final class LoadCell {
    /** Standard deviation of one reading, kN: about 0.3 % of the bolt's yield load. */
    static final double NOISE_KN = 0.15;

    private static final int READINGS = 40;
    private static final double ANGLES_PER_DEG = 10;
    private static final double LOADS_PER_KN = 100;

    private LoadCell() {}

    /** Readings evenly over the head's turn, at the angles that the tool counts. */
    static List<Point> read(TurnedBolt bolt, Tool.Done done, double driveNmPerDeg, UniformRandomProvider random) {
        var noise = ZigguratSampler.NormalizedGaussian.of(random);
        var points = new ArrayList<Point>();
        for (int i = 1; i <= READINGS; i++) {
            double headDeg = done.snugHeadDeg() + (done.stopHeadDeg() - done.snugHeadDeg()) * i / READINGS;
            double toolDeg = headDeg + bolt.torqueNm(headDeg) / driveNmPerDeg;
            double loadKN = bolt.loadN(headDeg) / 1000 + NOISE_KN * noise.sample();
            points.add(new Point(rounded(toolDeg, ANGLES_PER_DEG), rounded(loadKN, LOADS_PER_KN)));
        }
        return points;
    }

    private static double rounded(double value, double partsOfOne) {
        return Math.round(value * partsOfOne) / partsOfOne;
    }
}
