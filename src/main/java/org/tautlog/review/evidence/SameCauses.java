package org.tautlog.review.evidence;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.review.stream.Stream;

/** Looks among the tightenings around an engine for those that share what explains it. */
final class SameCauses {
    private record Suspicion(FindingCode code, SameCause.Scope scope, String name) {}

    private SameCauses() {}

    static List<SameCause> of(List<Judgement> own, List<Judgement> others) {
        var suspicions = new LinkedHashSet<Suspicion>();
        for (var judgement : own) {
            first(judgement).ifPresent(code -> {
                suspicions.add(new Suspicion(code, SameCause.Scope.SPINDLE, stream(judgement)));
                if (!judgement.identity().boltLot().isEmpty()) {
                    suspicions.add(new Suspicion(
                            code, SameCause.Scope.LOT, judgement.identity().boltLot()));
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
                            .filter(other -> first(other).equals(Optional.of(suspicion.code())))
                            .map(Judgement::identity)
                            .toList(),
                    there.size()));
        }
        return causes;
    }

    private static Predicate<Judgement> inScope(Suspicion suspicion) {
        return other -> suspicion
                .name()
                .equals(
                        suspicion.scope() == SameCause.Scope.LOT
                                ? other.identity().boltLot()
                                : stream(other));
    }

    private static String stream(Judgement judgement) {
        return new Stream(judgement.identity().station(), judgement.identity().spindle()).words();
    }

    /** What explains a tightening: its first finding that is more than a note or the attempt's number. */
    private static Optional<FindingCode> first(Judgement judgement) {
        return judgement.findings().stream()
                .filter(finding -> finding.severity() != Consequence.NOTE)
                .map(Finding::code)
                .filter(code -> code != FindingCode.REPEATED_ATTEMPT)
                .findFirst();
    }
}
