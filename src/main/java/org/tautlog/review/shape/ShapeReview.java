package org.tautlog.review.shape;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.trace.TraceIdentity;

/**
 * The shapes of a shift's curves, each held against those of its stream and bolt position from before it.
 *
 * @param compared every curve that could be compared, in time order
 * @param streams how far each envelope was learned, in order of stream and bolt position
 * @param notCompared why each of the others could not be
 * @param withoutShape first attempts whose curve has no shape, as no elastic line was found
 */
public record ShapeReview(
        List<ComparedShape> compared,
        List<ShapeStream> streams,
        Map<TraceIdentity, String> notCompared,
        int withoutShape) {
    private static final Comparator<ComparedShape> MOST_UNLIKELY_FIRST = Comparator.comparingDouble(
                    (ComparedShape one) -> one.departure().p())
            .thenComparing(one -> one.departure().distance(), Comparator.reverseOrder());

    public ShapeReview {
        compared = List.copyOf(compared);
        streams = List.copyOf(streams);
        notCompared = Map.copyOf(notCompared);
    }

    /** {@return conforming tightenings whose curve leaves its envelope, most unlikely first: they ask for a look} */
    public List<ComparedShape> outliers() {
        return compared.stream()
                .filter(one -> one.unsuspected() && one.departure().leaves())
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
     * Where the curve of a tightening lies that a verdict speaks against.
     *
     * @param tightening which one
     * @return its comparison, or why there is none
     */
    public Answer<ShapeComparison> of(TraceIdentity tightening) {
        return compared.stream()
                .filter(one -> one.tightening().equals(tightening))
                .flatMap(one -> one.comparison().stream())
                .findFirst()
                .map(Answer::of)
                .orElseGet(() -> Answer.missing(
                        Reason.NOT_ASKED,
                        notCompared.getOrDefault(tightening, "it is not of this shift or nothing speaks against it")));
    }
}
