package org.tautlog.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.judge.Judgement;

/**
 * The estimated clamp loads of one engine's bolts taken together: what leaks is the lowest, what distorts bores is the spread.
 *
 * @param serial the engine's serial
 * @param bolts how many bolt positions have an estimate; at least 1
 * @param withoutEstimate how many positions were tightened and have none
 * @param lowestKN lowest clamp load, kN
 * @param lowestBolt its position
 * @param meanKN mean clamp load, kN
 * @param spreadKN highest less lowest clamp load, kN
 */
public record EngineClampLoad(
        String serial,
        int bolts,
        int withoutEstimate,
        double lowestKN,
        String lowestBolt,
        double meanKN,
        double spreadKN) {
    public EngineClampLoad {
        if (bolts < 1 || withoutEstimate < 0) {
            throw new IllegalArgumentException("bolts is " + bolts + ", withoutEstimate " + withoutEstimate
                    + "; an engine has at least 1 bolt with an estimate and at least 0 without");
        }
    }

    /**
     * The clamp loads of all engines that have any estimate; of several attempts on one bolt the last counts.
     *
     * @param judgements the judgements, in any order
     * @return one entry for each engine, in the order of the engines' first appearance
     */
    public static List<EngineClampLoad> of(List<Judgement> judgements) {
        var engines = new LinkedHashMap<String, Map<String, Judgement>>();
        for (var judgement : judgements) {
            var identity = judgement.identity();
            engines.computeIfAbsent(identity.serial(), serial -> new LinkedHashMap<>())
                    .merge(
                            identity.bolt(),
                            judgement,
                            (known, other) -> other.identity().attempt()
                                            >= known.identity().attempt()
                                    ? other
                                    : known);
        }
        var loads = new ArrayList<EngineClampLoad>();
        engines.forEach((serial, bolts) -> {
            var estimated = bolts.values().stream()
                    .filter(bolt -> bolt.signature().clampLoad().loadKN().isFound())
                    .toList();
            if (!estimated.isEmpty()) {
                loads.add(of(serial, estimated, bolts.size() - estimated.size()));
            }
        });
        return List.copyOf(loads);
    }

    private static EngineClampLoad of(String serial, List<Judgement> estimated, int without) {
        var lowest = estimated.get(0);
        double highestKN = loadKN(lowest);
        double sumKN = 0;
        for (var bolt : estimated) {
            lowest = loadKN(bolt) < loadKN(lowest) ? bolt : lowest;
            highestKN = Math.max(highestKN, loadKN(bolt));
            sumKN += loadKN(bolt);
        }
        return new EngineClampLoad(
                serial,
                estimated.size(),
                without,
                loadKN(lowest),
                lowest.identity().bolt(),
                sumKN / estimated.size(),
                highestKN - loadKN(lowest));
    }

    private static double loadKN(Judgement judgement) {
        return judgement.signature().clampLoad().loadKN().number();
    }
}
