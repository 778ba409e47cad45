package org.tautlog.review.shape;

import java.util.Objects;
import org.tautlog.judge.Verdict;
import org.tautlog.trace.TraceIdentity;

/**
 * A tightening whose curve was held against those of its stream and bolt position from before it.
 *
 * @param tightening which it is
 * @param verdict what was judged of it; a shape never changes it
 * @param comparison where it lies
 * @param adjusted share of good curves that lie as far out, adjusted for all curves compared (Benjamini and Hochberg); 1 for
 *     curves that a verdict speaks against already
 */
public record ComparedShape(TraceIdentity tightening, Verdict verdict, ShapeComparison comparison, double adjusted) {
    public ComparedShape {
        Objects.requireNonNull(tightening, "tightening");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(comparison, "comparison");
        if (!(adjusted >= 0 && adjusted <= 1)) {
            throw new IllegalArgumentException("adjusted is " + adjusted + "; it must lie from 0 to 1");
        }
    }

    /** {@return whether it leaves the envelope} */
    public boolean leaves() {
        return comparison.departure().leaves();
    }

    /** {@return whether nothing else spoke against it, so that it counts where false signals are counted} */
    public boolean unsuspected() {
        return verdict == Verdict.CONFORMING;
    }
}
