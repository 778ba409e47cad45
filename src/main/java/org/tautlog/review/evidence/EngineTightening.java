package org.tautlog.review.evidence;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.judge.Judgement;
import org.tautlog.review.Listed;
import org.tautlog.signature.EndState;

/**
 * One recording of an engine: what stands, what was said before, and its trace among its peers.
 *
 * @param judgement the judgement that stands
 * @param importEntry number of the ledger's entry of its import; {@link #NOT_ENTERED} where the ledger has none
 * @param said every judgement, the standing one last; never empty
 * @param drawnOrNull its trace with conforming peers of its stream from before and after; null where the trace is lost
 */
public record EngineTightening(
        Judgement judgement,
        int importEntry,
        List<Said> said,
        @Nullable Listed drawnOrNull) {
    /** Later than every decision: nobody can have decided on it. */
    public static final int NOT_ENTERED = Integer.MAX_VALUE;

    public EngineTightening {
        Objects.requireNonNull(judgement, "judgement");
        said = List.copyOf(said);
        if (said.isEmpty()) {
            throw new IllegalArgumentException("said is empty; a judged recording of "
                    + judgement.identity().words() + " has at least 1 judgement");
        }
    }

    /** {@return its trace with its peers; empty where the archive has the judgement and lost the trace} */
    public Optional<Listed> drawn() {
        return Optional.ofNullable(drawnOrNull);
    }

    /** {@return whether the curve shows that the bolt stayed elastic, so that it is as new; unknown counts as not} */
    public boolean leftBoltAsNew() {
        return judgement.signature().onset().endState() == EndState.ELASTIC;
    }

    /** {@return the judgement that stands, with what proves it} */
    public Said standing() {
        return said.get(said.size() - 1);
    }

    /**
     * What a person had before them who decided: the judgement that stood then.
     *
     * @param entry number of the decision's entry in the ledger
     * @return the judgement; empty where none was there yet
     */
    public Optional<Said> knownAt(int entry) {
        return said.stream().filter(one -> one.entry() < entry).reduce((earlier, later) -> later);
    }

    /** {@return whether specifications that judged it disagree} */
    public boolean disagreed() {
        return said.stream().map(Said::verdict).distinct().count() > 1;
    }
}
