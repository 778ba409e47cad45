package org.tautlog.review.evidence;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.tautlog.archive.KeptDecision;
import org.tautlog.problem.Problem;

/**
 * The engines that a suspicion holds.
 *
 * @param suspicion what it started from, in words
 * @param places the places where its cause may have been, each with what it may have touched there
 * @param decisions what people decided about these engines and still stands, by serial, in the order of the ledger
 * @param problems what of the archive is missing or was altered, so that the list may lack engines
 */
public record EngineHold(
        String suspicion, List<Containment> places, Map<String, List<KeptDecision>> decisions, List<Problem> problems) {
    public EngineHold {
        Objects.requireNonNull(suspicion, "suspicion");
        places = List.copyOf(places);
        decisions = new TreeMap<>(decisions);
        decisions.replaceAll((serial, ofEngine) -> List.copyOf(ofEngine));
        decisions = Collections.unmodifiableMap(decisions);
        problems = List.copyOf(problems);
    }

    /**
     * The decisions about an engine.
     *
     * @param serial the engine
     * @return those that stand; none where nobody decided
     */
    public List<KeptDecision> decisions(String serial) {
        return decisions.getOrDefault(serial, List.of());
    }

    /**
     * The decisions that reach one contained tightening.
     *
     * @param one the tightening
     * @return those that stand about its bolt or the whole engine; without a recording those about the engine and any bolt
     */
    public List<KeptDecision> decisions(Contained one) {
        var ofEngine = decisions(one.serial());
        return one.judgement()
                .map(judgement -> ofEngine.stream()
                        .filter(decision ->
                                DecisionReach.isAbout(judgement.identity().bolt(), decision))
                        .toList())
                .orElse(ofEngine);
    }

    /** {@return the engines to hold, all places together, in order} */
    public List<String> engines() {
        return places.stream()
                .flatMap(place -> place.engines().stream())
                .distinct()
                .sorted()
                .toList();
    }
}
