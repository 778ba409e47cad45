package org.tautlog.review.shape;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.judge.Verdict;
import org.tautlog.trace.TraceIdentity;

/**
 * A tightening whose curve was held against those of its stream and bolt position from before it.
 *
 * @param tightening which it is
 * @param verdict what was judged of it; a shape never changes it
 * @param departure where it lies furthest out
 * @param adjusted share of good curves that lie as far out, adjusted for all curves compared (Benjamini and Hochberg); 1 for
 *     curves that a verdict speaks against already
 * @param comparisonOrNull the curve beside its envelope, step by step; null where nothing speaks against it, as a shift has
 *     many such
 */
public record ComparedShape(
        TraceIdentity tightening,
        Verdict verdict,
        Departure departure,
        double adjusted,
        @Nullable ShapeComparison comparisonOrNull) {
    public ComparedShape {
        Objects.requireNonNull(tightening, "tightening");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(departure, "departure");
        if (!(adjusted >= 0 && adjusted <= 1)) {
            throw new IllegalArgumentException("adjusted is " + adjusted + "; it must lie from 0 to 1");
        }
    }

    static ComparedShape of(TraceIdentity tightening, Verdict verdict, ShapeComparison comparison) {
        boolean calm = verdict == Verdict.CONFORMING && !comparison.departure().leaves();
        return new ComparedShape(tightening, verdict, comparison.departure(), 1, calm ? null : comparison);
    }

    ComparedShape adjusted(double p) {
        return new ComparedShape(tightening, verdict, departure, p, comparisonOrNull);
    }

    /** {@return the curve beside its envelope; empty where nothing speaks against it} */
    public Optional<ShapeComparison> comparison() {
        return Optional.ofNullable(comparisonOrNull);
    }

    /** {@return whether nothing else spoke against it, so that it counts where false signals are counted} */
    public boolean unsuspected() {
        return verdict == Verdict.CONFORMING;
    }
}
