package org.tautlog.review.evidence;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tautlog.judge.BriefJudgement;

/** Where the bolts of a lot went: how many recordings at which station, on which engines. */
public final class LotPlaces {
    private final Map<String, Integer> atStation = new TreeMap<>();
    private final Set<String> engines = new HashSet<>();

    /** Of a lot of which nothing was met yet. */
    public LotPlaces() {}

    /**
     * Counts one recording.
     *
     * @param judgement the judgement that stands, of a bolt of the lot
     */
    public void add(BriefJudgement judgement) {
        atStation.merge(judgement.identity().station(), 1, Integer::sum);
        engines.add(judgement.identity().serial());
    }

    /** How far it reaches beyond some recordings of the lot, on engines that are held. */
    LotReach beyond(String lot, LotPlaces inside, Set<String> held) {
        int met = inside.recordings();
        return new LotReach(
                lot,
                met,
                recordings() - met,
                (int) engines.stream().filter(engine -> !held.contains(engine)).count(),
                atStation.entrySet().stream()
                        .filter(place -> place.getValue() > inside.atStation.getOrDefault(place.getKey(), 0))
                        .map(Map.Entry::getKey)
                        .toList());
    }

    private int recordings() {
        return atStation.values().stream().mapToInt(Integer::intValue).sum();
    }
}
