package org.tautlog.review.evidence;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.archive.KeptDecision;

/**
 * Which attempt has which decision for a new bolt. Each decision is for one attempt: the next one after it or, where there
 * is none or a later decision is for that one, an attempt that was made without.
 */
final class NewBolts {
    private final List<EngineTightening> attempts;
    private final Map<Integer, KeptDecision> given = new HashMap<>();

    private NewBolts(List<EngineTightening> attempts) {
        this.attempts = attempts;
    }

    /**
     * Gives decisions to attempts.
     *
     * @param attempts the attempts on a bolt position, first attempt first
     * @param needs what each of them needs; null where it is no further attempt
     * @param bolt the bolt position
     * @param decisions what people decided about the engine, in order
     * @return the decision of each attempt that has one, by its place in the list
     */
    static Map<Integer, KeptDecision> of(
            List<EngineTightening> attempts,
            Map<Integer, Repeat.Need> needs,
            String bolt,
            List<KeptDecision> decisions) {
        var bolts = new NewBolts(attempts);
        var inForce = inForce(bolt, decisions);
        var left = new ArrayDeque<KeptDecision>();
        for (int i = inForce.size() - 1; i >= 0; i--) {
            if (!bolts.toNext(inForce.get(i))) {
                left.addFirst(inForce.get(i));
            }
        }
        left.forEach(decision -> bolts.afterTheFact(decision, needs));
        return bolts.given;
    }

    private boolean toNext(KeptDecision decision) {
        for (int i = 0; i < attempts.size(); i++) {
            if (DecisionReach.wasMadeAfter(attempts.get(i), decision)) {
                return given.putIfAbsent(i, decision) == null;
            }
        }
        return false;
    }

    private void afterTheFact(KeptDecision decision, Map<Integer, Repeat.Need> needs) {
        var open = needs.keySet().stream()
                .filter(i -> !given.containsKey(i) && !DecisionReach.wasMadeAfter(attempts.get(i), decision))
                .sorted()
                .toList();
        open.stream()
                .filter(i -> needs.get(i) != Repeat.Need.NONE)
                .findFirst()
                .or(() -> open.stream().reduce((first, last) -> last))
                .ifPresent(i -> given.put(i, decision));
    }

    /** A quarantine revokes earlier decisions about the same; acceptance and release build on them. */
    private static List<KeptDecision> inForce(String bolt, List<KeptDecision> decisions) {
        var inForce = new ArrayList<KeptDecision>();
        for (var one : decisions) {
            if (DecisionReach.isAbout(bolt, one)) {
                switch (one.decision().action()) {
                    case RE_TIGHTEN, REPLACE -> inForce.add(one);
                    case QUARANTINE ->
                        inForce.removeIf(
                                earlier -> !DecisionReach.isOfEngine(one) || DecisionReach.isOfEngine(earlier));
                    case ACCEPT, RELEASE -> {}
                }
            }
        }
        return inForce;
    }
}
