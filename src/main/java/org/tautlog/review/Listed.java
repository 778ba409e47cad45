package org.tautlog.review;

import java.util.List;
import java.util.Objects;
import org.tautlog.judge.Judgement;
import org.tautlog.review.stream.Stream;

/**
 * One tightening that a person must look at.
 *
 * @param rank its place in the list, 1 is the worst
 * @param judgement verdict and findings
 * @param outline its trace
 * @param peers traces of conforming tightenings of the same stream and, where there are enough, the same bolt position
 */
public record Listed(int rank, Judgement judgement, Outline outline, List<Outline> peers) {
    public Listed {
        if (rank < 1) {
            throw new IllegalArgumentException("rank is " + rank + "; ranks count from 1");
        }
        Objects.requireNonNull(judgement, "judgement");
        Objects.requireNonNull(outline, "outline");
        peers = List.copyOf(peers);
    }

    /** {@return the stream it belongs to} */
    public Stream stream() {
        return Stream.of(judgement.identity());
    }
}
