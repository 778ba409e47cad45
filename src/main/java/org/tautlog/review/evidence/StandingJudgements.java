package org.tautlog.review.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.table.Kept;
import org.tautlog.archive.table.KeptJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/** Of each recording the judgement that stands: that of the specification first used last; earlier ones stay beside it. */
public final class StandingJudgements {
    private record Recording(TraceIdentity identity, Source source) {}

    private StandingJudgements() {}

    /**
     * Picks one judgement a recording.
     *
     * @param kept judgements by whatever specification
     * @param specifications those of the archive in the order in which they were first used
     * @return the judgements that stand, in the order in which their recordings come first
     */
    public static List<Judgement> of(List<Kept<KeptJudgement>> kept, List<SpecificationUsed> specifications) {
        var standing = new LinkedHashMap<Recording, Kept<KeptJudgement>>();
        var order = order(specifications);
        for (var one : kept) {
            var judgement = one.value().judgement();
            standing.merge(
                    new Recording(judgement.identity(), judgement.source()),
                    one,
                    (known, other) -> order.compare(known, other) > 0 ? known : other);
        }
        return standing.values().stream().map(one -> one.value().judgement()).toList();
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
        var hashes = new ArrayList<String>();
        specifications.forEach(used -> hashes.add(used.sha256()));
        return Comparator.<Kept<KeptJudgement>>comparingInt(
                        kept -> hashes.lastIndexOf(kept.value().specificationSha256()))
                .thenComparing(Kept::batch);
    }
}
