package org.tautlog.joint.study;

import java.util.List;
import java.util.Map;

/**
 * What a tolerance study found.
 *
 * @param draws how many tightenings were drawn
 * @param seed the seed they were drawn with
 * @param summaries each quantity's distribution
 * @param drivers for each quantity the factors that scatter, strongest first
 * @param yieldedAtAssemblyShare share of bolts that yield while they are turned
 * @param yieldedAtWarmUpShare share of bolts that reach hot yield on the first warm-up
 * @param scatterLeft what rules the scatter of the cold clamp load
 * @param window limits from the stated coverage
 */
public record StudyResult(
        int draws,
        long seed,
        Map<Quantity, Summary> summaries,
        Map<Quantity, List<Driver>> drivers,
        double yieldedAtAssemblyShare,
        double yieldedAtWarmUpShare,
        ScatterLeft scatterLeft,
        ProposedWindow window) {
    /** Copies the maps. */
    public StudyResult {
        summaries = Map.copyOf(summaries);
        drivers = Map.copyOf(drivers);
    }

    /**
     * One quantity's distribution.
     *
     * @param quantity the quantity
     * @return its summary
     */
    public Summary summary(Quantity quantity) {
        return found(quantity, summaries);
    }

    /**
     * What drives one quantity, strongest first.
     *
     * @param quantity the quantity
     * @return the factors that scatter
     */
    public List<Driver> drivers(Quantity quantity) {
        return found(quantity, drivers);
    }

    /**
     * Whether the method does what it is meant to: no draw yields while it is turned, every draw yields on the first
     * warm-up.
     *
     * @return true only where both hold for all draws
     */
    public boolean everyBoltYieldsHotAndNoneBefore() {
        return yieldedAtAssemblyShare == 0 && yieldedAtWarmUpShare == 1;
    }

    private static <T> T found(Quantity quantity, Map<Quantity, T> map) {
        var value = map.get(quantity);
        if (value == null) throw new IllegalArgumentException("quantity " + quantity + " was not studied");
        return value;
    }
}
