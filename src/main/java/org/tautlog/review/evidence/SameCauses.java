package org.tautlog.review.evidence;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.review.stream.Stream;
import org.tautlog.trace.TraceIdentity;

/** Looks among the tightenings around an engine for those that share what explains it. */
final class SameCauses {
    private record Suspicion(FindingCode code, SameCause.Scope scope, String name) {}

    private SameCauses() {}

    static List<SameCause> of(List<Judgement> own, List<Neighbour> others) {
        var suspicions = new LinkedHashSet<Suspicion>();
        for (var judgement : own) {
            var identity = judgement.identity();
            first(BriefJudgement.of(judgement)).ifPresent(code -> {
                suspicions.add(new Suspicion(code, SameCause.Scope.SPINDLE, stream(identity)));
                if (!identity.boltLot().isEmpty()) {
                    suspicions.add(new Suspicion(code, SameCause.Scope.LOT, identity.boltLot()));
                }
            });
        }
        var causes = new ArrayList<SameCause>();
        for (var suspicion : suspicions) {
            var there = others.stream().filter(inScope(suspicion)).toList();
            causes.add(new SameCause(
                    suspicion.code(),
                    suspicion.scope(),
                    suspicion.name(),
                    there.stream()
                            .filter(other -> first(other.judgement()).equals(Optional.of(suspicion.code())))
                            .map(Neighbour::identity)
                            .toList(),
                    there.size()));
        }
        return causes;
    }

    private static Predicate<Neighbour> inScope(Suspicion suspicion) {
        return other -> suspicion
                .name()
                .equals(
                        suspicion.scope() == SameCause.Scope.LOT
                                ? other.identity().boltLot()
                                : stream(other.identity()));
    }

    private static String stream(TraceIdentity identity) {
        return Stream.of(identity).words();
    }

    /** What explains a tightening: its first finding that is more than a note or the attempt's number. */
    private static Optional<FindingCode> first(BriefJudgement judgement) {
        return judgement.causes().stream()
                .filter(code -> code != FindingCode.REPEATED_ATTEMPT)
                .findFirst();
    }
}
