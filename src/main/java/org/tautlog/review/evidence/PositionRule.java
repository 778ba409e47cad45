package org.tautlog.review.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.tautlog.archive.KeptDecision;
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
        var acceptance = DecisionReach.acceptance(bolt, decisions).orElse(null);
        boolean accepted = acceptance != null
                && !attempts.isEmpty()
                && DecisionReach.covers(acceptance, attempts.get(attempts.size() - 1));
        var standing = standing(attempts, repeats, accepted);
        return new BoltPosition(
                station,
                bolt,
                attempts,
                repeats,
                standing,
                accepted || attempts.isEmpty() ? null : acceptance,
                standing != PositionStanding.DECIDED
                        ? null
                        : accepted ? acceptance : last(repeats).orElse(null));
    }

    private static List<Repeat> repeats(String bolt, List<EngineTightening> attempts, List<KeptDecision> decisions) {
        var needs = new TreeMap<Integer, Repeat.Need>();
        for (int i = 0; i < attempts.size(); i++) {
            int attempt = attempt(attempts.get(i));
            if (i > 0 || attempt > 1) {
                needs.put(i, need(attempts.subList(0, i), attempt));
            }
        }
        var given = NewBolts.of(attempts, needs, bolt, decisions);
        var repeats = new ArrayList<Repeat>();
        needs.forEach((i, need) -> {
            var decision = given.get(i);
            boolean late = decision != null && !DecisionReach.wasMadeAfter(attempts.get(i), decision);
            repeats.add(new Repeat(attempt(attempts.get(i)), need, decision, late));
        });
        return repeats;
    }

    private static int attempt(EngineTightening tightening) {
        return tightening.judgement().identity().attempt();
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

    private static PositionStanding standing(List<EngineTightening> attempts, List<Repeat> repeats, boolean accepted) {
        if (attempts.isEmpty()) {
            return PositionStanding.MISSING;
        }
        var last = attempts.get(attempts.size() - 1).judgement();
        boolean decided = accepted || (last.verdict() == Verdict.REVIEW && onlyRepeated(last) && settled(repeats));
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

    private static boolean onlyRepeated(Judgement judgement) {
        return judgement.findings().stream()
                .allMatch(finding ->
                        finding.code() == FindingCode.REPEATED_ATTEMPT || finding.severity() == Consequence.NOTE);
    }

    private static boolean settled(List<Repeat> repeats) {
        return last(repeats).isPresent();
    }

    private static Optional<KeptDecision> last(List<Repeat> repeats) {
        return repeats.isEmpty()
                ? Optional.empty()
                : repeats.get(repeats.size() - 1).decision();
    }
}
