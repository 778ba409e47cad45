package org.tautlog.review;

import java.util.List;
import java.util.Objects;
import org.tautlog.judge.Judgement;
import org.tautlog.review.shape.Departure;
import org.tautlog.review.shape.ShapeComparison;
import org.tautlog.review.stream.Stream;
import org.tautlog.spc.Answer;

/**
 * One tightening that a person must look at.
 *
 * @param rank its place in the list, 1 is the worst
 * @param judgement verdict and findings
 * @param outline its trace
 * @param peers traces of conforming tightenings of the same stream and, where there are enough, the same bolt position
 * @param shape where its curve lies against those of its peers, or why that is not known
 */
public record Listed(
        int rank, Judgement judgement, Outline outline, List<Outline> peers, Answer<ShapeComparison> shape) {
    public Listed {
        if (rank < 1) {
            throw new IllegalArgumentException("rank is " + rank + "; ranks count from 1");
        }
        Objects.requireNonNull(judgement, "judgement");
        Objects.requireNonNull(outline, "outline");
        peers = List.copyOf(peers);
        Objects.requireNonNull(shape, "shape");
    }

    /** {@return the stream it belongs to} */
    public Stream stream() {
        return Stream.of(judgement.identity());
    }

    /** {@return whether the place where its curve leaves its peers means anything} */
    public boolean shapeHasPlace() {
        return Departure.hasPlace(judgement.findings());
    }
}
