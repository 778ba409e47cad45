package org.tautlog.review.evidence;

import java.util.List;
import java.util.Objects;
import org.tautlog.problem.Problem;

/**
 * The engines that a suspicion holds.
 *
 * @param suspicion what it started from, in words
 * @param places the places where its cause may have been, each with what it may have touched there
 * @param problems what of the archive is missing or was altered, so that the list may lack engines
 */
public record EngineHold(String suspicion, List<Containment> places, List<Problem> problems) {
    public EngineHold {
        Objects.requireNonNull(suspicion, "suspicion");
        places = List.copyOf(places);
        problems = List.copyOf(problems);
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
