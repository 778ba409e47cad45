package org.tautlog.review.shape;

import java.util.Comparator;
import java.util.List;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.trace.TraceIdentity;

/**
 * The shapes of a shift's curves, each held against those of its stream and bolt position from before it.
 *
 * @param compared every curve that could be compared, in time order
 * @param streams how far each envelope was learned, in order of stream and bolt position
 * @param withoutShape first attempts whose curve has no shape, as no elastic line was found
 */
public record ShapeReview(List<ComparedShape> compared, List<ShapeStream> streams, int withoutShape) {
    private static final Comparator<ComparedShape> MOST_UNLIKELY_FIRST = Comparator.comparingDouble(
                    (ComparedShape one) -> one.comparison().departure().p())
            .thenComparing(one -> one.comparison().departure().distance(), Comparator.reverseOrder());

    public ShapeReview {
        compared = List.copyOf(compared);
        streams = List.copyOf(streams);
    }

    /** {@return conforming tightenings whose curve leaves its envelope, most unlikely first: they ask for a look} */
    public List<ComparedShape> outliers() {
        return compared.stream()
                .filter(one -> one.unsuspected() && one.leaves())
                .sorted(MOST_UNLIKELY_FIRST)
                .toList();
    }

    /** {@return how many conforming tightenings were compared} */
    public int unsuspected() {
        return (int) compared.stream().filter(ComparedShape::unsuspected).count();
    }

    /** {@return how many good curves leave their envelope by chance, of so many} */
    public double expected() {
        return (double) unsuspected() / Envelope.ONE_IN;
    }

    /** {@return how many streams and bolt positions are still being learned} */
    public int learning() {
        return (int) streams.stream().filter(ShapeStream::learning).count();
    }

    /**
     * Where one tightening's curve lies.
     *
     * @param tightening which one
     * @return its comparison, or why there is none
     */
    public Answer<ShapeComparison> of(TraceIdentity tightening) {
        return compared.stream()
                .filter(one -> one.tightening().equals(tightening))
                .findFirst()
                .map(one -> Answer.of(one.comparison()))
                .orElseGet(() -> Answer.missing(Reason.TOO_FEW, whyNot(tightening)));
    }

    private static String whyNot(TraceIdentity tightening) {
        return tightening.attempt() > 1
                ? "a later attempt is no peer of first ones"
                : "no elastic line, or fewer than " + Envelope.LEAST_PEERS
                        + " conforming curves of its spindle and bolt position came before it";
    }
}
