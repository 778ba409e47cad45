package org.tautlog.review.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.KeptDecision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.signature.EndState;

/** How a bolt position stands after its attempts and the decisions of people. */
final class PositionRule {
    private PositionRule() {}

    static BoltPosition of(String station, String bolt, List<EngineTightening> attempts, List<KeptDecision> decisions) {
        var repeats = repeats(bolt, attempts, decisions);
        return new BoltPosition(station, bolt, attempts, repeats, standing(bolt, attempts, repeats, decisions));
    }

    private static List<Repeat> repeats(String bolt, List<EngineTightening> attempts, List<KeptDecision> decisions) {
        var repeats = new ArrayList<Repeat>();
        for (int i = 0; i < attempts.size(); i++) {
            int attempt = attempts.get(i).judgement().identity().attempt();
            if (i > 0 || attempt > 1) {
                repeats.add(new Repeat(attempt, need(attempts.subList(0, i), attempt), newBolt(bolt, decisions)));
            }
        }
        return repeats;
    }

    private static Repeat.Need need(List<EngineTightening> earlier, int attempt) {
        var need = earlier.size() < attempt - 1 ? Repeat.Need.EARLIER_MISSING : Repeat.Need.NONE;
        for (var one : earlier) {
            if (one.judgement().signature().onset().endState() == EndState.UNKNOWN) {
                need = need == Repeat.Need.NONE ? Repeat.Need.NOT_TOLD : need;
            } else if (!one.leftBoltAsNew()) {
                return Repeat.Need.PAST_ONSET;
            }
        }
        return need;
    }

    /** The decision for a new bolt; a later acceptance or release of the same builds on it, anything else revokes it. */
    private static @Nullable KeptDecision newBolt(String bolt, List<KeptDecision> decisions) {
        KeptDecision ofBolt = null;
        KeptDecision ofEngine = null;
        for (var one : decisions) {
            if (one.decision().bolt().equals(bolt)) {
                ofBolt = after(ofBolt, one);
            } else if (one.decision().bolt().isEmpty()) {
                ofEngine = after(ofEngine, one);
            }
        }
        return ofBolt == null ? ofEngine : ofBolt;
    }

    private static @Nullable KeptDecision after(@Nullable KeptDecision known, KeptDecision next) {
        return switch (next.decision().action()) {
            case RE_TIGHTEN, REPLACE -> next;
            case ACCEPT, RELEASE -> known;
            case QUARANTINE -> null;
        };
    }

    private static PositionStanding standing(
            String bolt, List<EngineTightening> attempts, List<Repeat> repeats, List<KeptDecision> decisions) {
        if (attempts.isEmpty()) {
            return PositionStanding.MISSING;
        }
        var last = attempts.get(attempts.size() - 1).judgement();
        boolean decided = accepted(bolt, decisions).isPresent()
                || (last.verdict() == Verdict.REVIEW && onlyRepeated(last) && settled(repeats));
        if (last.verdict() == Verdict.NONCONFORMING && !decided) {
            return PositionStanding.NONCONFORMING;
        }
        if (repeats.stream().anyMatch(Repeat::undecided)) {
            return PositionStanding.UNDECIDED_REPEAT;
        }
        if (last.verdict() == Verdict.CONFORMING) {
            return PositionStanding.CONFORMING;
        }
        if (decided) {
            return PositionStanding.DECIDED;
        }
        return last.verdict() == Verdict.UNJUDGED ? PositionStanding.UNJUDGED : PositionStanding.REVIEW;
    }

    private static Optional<KeptDecision> accepted(String bolt, List<KeptDecision> decisions) {
        return decisions.stream()
                .filter(KeptDecision::standing)
                .filter(one ->
                        one.decision().bolt().isEmpty() || one.decision().bolt().equals(bolt))
                .filter(one -> one.decision().action() == DecisionAction.ACCEPT
                        || one.decision().action() == DecisionAction.RELEASE)
                .findFirst();
    }

    private static boolean onlyRepeated(Judgement judgement) {
        return judgement.findings().stream()
                .allMatch(finding ->
                        finding.code() == FindingCode.REPEATED_ATTEMPT || finding.severity() == Consequence.NOTE);
    }

    private static boolean settled(List<Repeat> repeats) {
        return !repeats.isEmpty()
                && repeats.stream().allMatch(repeat -> repeat.decision().isPresent());
    }
}
