package org.tautlog.review.evidence;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.table.Kept;
import org.tautlog.archive.table.KeptJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/** Of each recording the judgement that stands: that of the specification first used last; earlier ones stay beside it. */
public final class StandingJudgements {
    /** What makes a recording the same. */
    record Recording(TraceIdentity identity, Source source) {}

    private StandingJudgements() {}

    /**
     * Picks one judgement a recording.
     *
     * @param kept judgements by whatever specification
     * @param specifications those of the archive in the order in which they were first used
     * @return the judgements that stand, in the order in which their recordings come first
     */
    public static List<Judgement> of(List<Kept<KeptJudgement>> kept, List<SpecificationUsed> specifications) {
        return standing(
                        kept,
                        one -> new Recording(
                                one.value().judgement().identity(),
                                one.value().judgement().source()),
                        order(specifications))
                .stream()
                .map(one -> one.value().judgement())
                .toList();
    }

    /** Of each recording the candidate that is last by the order, in the order in which their recordings come first. */
    static <T> Collection<T> standing(List<T> candidates, Function<T, Recording> recording, Comparator<T> order) {
        var standing = new LinkedHashMap<Recording, T>();
        for (var one : candidates) {
            standing.merge(
                    recording.apply(one), one, (known, other) -> order.compare(known, other) > 0 ? known : other);
        }
        return standing.values();
    }

    /**
     * The judgement by the specification first used last: what it says of specification and program stands.
     *
     * @param kept judgements by whatever specification
     * @param specifications those of the archive in the order in which they were first used
     * @return one such judgement; empty where there is none
     */
    public static Optional<KeptJudgement> last(List<Kept<KeptJudgement>> kept, List<SpecificationUsed> specifications) {
        return kept.stream().max(order(specifications)).map(Kept::value);
    }

    /** Earliest used specification first; of one specification the program that judged first. */
    static Comparator<Kept<KeptJudgement>> order(List<SpecificationUsed> specifications) {
        return order(specifications, kept -> kept.value().specificationSha256(), Kept::batch);
    }

    /** The same of whatever knows by what specification it was judged, and in which batch. */
    static <T> Comparator<T> order(
            List<SpecificationUsed> specifications, Function<T, String> specification, Function<T, String> batch) {
        var hashes = specifications.stream().map(SpecificationUsed::sha256).toList();
        return Comparator.<T>comparingInt(one -> hashes.lastIndexOf(specification.apply(one)))
                .thenComparing(batch);
    }
}
